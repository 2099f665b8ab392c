package org.roofmaths.internal.numerics;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.exception.MathIllegalStateException;
import org.apache.commons.math3.optim.MaxIter;
import org.apache.commons.math3.optim.PointValuePair;
import org.apache.commons.math3.optim.linear.LinearConstraint;
import org.apache.commons.math3.optim.linear.LinearConstraintSet;
import org.apache.commons.math3.optim.linear.LinearObjectiveFunction;
import org.apache.commons.math3.optim.linear.NonNegativeConstraint;
import org.apache.commons.math3.optim.linear.Relationship;
import org.apache.commons.math3.optim.linear.SimplexSolver;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;

/** A linear program over variables that are zero or more, solved by the simplex method. */
public final class LinearProgram {
    private static final int MOST_STEPS = 20_000;

    private final double[] objective;
    private final List<LinearConstraint> constraints = new ArrayList<>();

    /** Starts a program with the coefficients of its objective. */
    public LinearProgram(double[] objective) {
        this.objective = objective.clone();
    }

    /** Adds: the sum of coefficients times variables is at most the limit. */
    public void addAtMost(double[] coefficients, double limit) {
        constraints.add(new LinearConstraint(coefficients, Relationship.LEQ, limit));
    }

    /** Adds: the sum of coefficients times variables is at least the limit. */
    public void addAtLeast(double[] coefficients, double limit) {
        constraints.add(new LinearConstraint(coefficients, Relationship.GEQ, limit));
    }

    /** Returns the variables that make the objective greatest; none if the method found no answer. */
    public double[] maximize() {
        return solve(GoalType.MAXIMIZE);
    }

    /** Returns the variables that make the objective least; none if the method found no answer. */
    public double[] minimize() {
        return solve(GoalType.MINIMIZE);
    }

    private double[] solve(GoalType goal) {
        try {
            PointValuePair found = new SimplexSolver()
                    .optimize(
                            new MaxIter(MOST_STEPS),
                            new LinearObjectiveFunction(objective, 0),
                            new LinearConstraintSet(constraints),
                            goal,
                            new NonNegativeConstraint(true));
            return found.getPoint();
        } catch (MathIllegalStateException noAnswer) { // infeasible, unbounded, or out of steps
            return new double[0];
        }
    }
}
