package org.roofmaths.examples;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicBoolean;
import org.roofmaths.problem.Attempt;
import org.roofmaths.problem.Problem;
import org.roofmaths.problem.Severity;
import org.roofmaths.sheet.Job;
import org.roofmaths.sheet.SiteSheet;

/**
 * The main job: reads a job file, prints its site sheet and writes it as Markdown and as a JSON tree.
 *
 * <p>Usage: {@code RunJob NAME-OR-PATH [FOLDER]}. The files go to the folder, {@code sheets} if none is given. A job file that is wrong
 * is refused with every problem at once, exit code 1, and no file is written. A sheet with an error on it is written, with exit code 1.
 */
public final class RunJob {
    private static final int OK = 0;
    private static final int REFUSED = 1;
    private static final int USAGE = 2;

    private RunJob() {}

    /**
     * Runs the job and leaves with its exit code.
     *
     * @param args the name of an example or the path of a job file, and the folder to write to
     * @throws IOException if a file cannot be read or written
     */
    public static void main(String[] args) throws IOException {
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        PrintStream err = new PrintStream(System.err, true, StandardCharsets.UTF_8);
        int code = run(args, out, err);
        if (code != OK) {
            System.exit(code);
        }
    }

    static int run(String[] args, PrintStream out, PrintStream err) throws IOException {
        if (args.length < 1 || args.length > 2) {
            err.println("usage: RunJob NAME-OR-PATH [FOLDER]; the examples are " + String.join(", ", JobFile.EXAMPLES));
            return USAGE;
        }
        Progress progress = new Progress(err);
        try {
            return work(args[0], Path.of(args.length == 2 ? args[1] : "sheets"), out, err);
        } finally {
            progress.stop();
        }
    }

    private static int work(String name, Path folder, PrintStream out, PrintStream err) throws IOException {
        Attempt<Map<String, Object>> tree = JobFile.read(name);
        Attempt<Job> job = tree.hasValue() ? Job.attemptFromTree(tree.orThrow()) : Attempt.failed(tree.problems());
        if (!job.hasValue()) {
            refuse(name, job.problems(), err);
            return REFUSED;
        }
        SiteSheet sheet = SiteSheet.of(job.orThrow());
        String text = sheet.toText();
        Files.createDirectories(folder);
        Path markdown = folder.resolve(fileName(sheet) + ".md");
        Path json = folder.resolve(fileName(sheet) + ".json");
        write(markdown, sheet.toMarkdown());
        write(json, JobFile.write(sheet.toTree()) + "\n");
        out.print(text);
        out.println();
        out.println("Written: " + markdown + ", " + json);
        boolean wrong = sheet.problems().stream().anyMatch(problem -> problem.severity() == Severity.ERROR);
        return wrong ? REFUSED : OK;
    }

    private static void refuse(String name, List<Problem> problems, PrintStream err) {
        err.println(name + ": " + problems.size() + (problems.size() == 1 ? " problem" : " problems")
                + ", nothing written");
        problems.forEach(problem -> {
            err.println("  " + problem.message());
            err.println("    " + problem.code().remedy());
        });
    }

    /** The job's name, with everything that a file name cannot hold on every system turned into a hyphen. */
    private static String fileName(SiteSheet sheet) {
        String safe = sheet.job().name().replaceAll("[^\\p{L}\\p{N}._-]+", "-");
        return safe.isBlank() || safe.startsWith(".") ? "job" : safe;
    }

    /** Writes beside the target and moves into place, so that nobody ever finds half a file. */
    private static void write(Path target, String text) throws IOException {
        Path part = Files.createTempFile(target.toAbsolutePath().getParent(), "sheet", ".part");
        Files.writeString(part, text);
        Files.move(part, target, StandardCopyOption.REPLACE_EXISTING);
    }

    /** Says once a second that work goes on; silent if it is done sooner. */
    private static final class Progress {
        private final AtomicBoolean done = new AtomicBoolean();
        private final Thread thread;

        Progress(PrintStream err) {
            thread = new Thread(() -> {
                try {
                    Thread.sleep(1000);
                    while (!done.get()) {
                        err.println("working ...");
                        Thread.sleep(1000);
                    }
                } catch (InterruptedException e) {
                    Thread.currentThread().interrupt(); // stopped: nothing more to say
                }
            });
            thread.setDaemon(true);
            thread.start();
        }

        void stop() {
            done.set(true);
            thread.interrupt();
        }
    }
}
