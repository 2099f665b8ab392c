import org.roofmaths.flashing.*;
import org.roofmaths.framing.*;
import org.roofmaths.problem.*;
import org.roofmaths.roof.*;
import org.roofmaths.units.*;
import org.roofmaths.ventilation.*;
import org.roofmaths.working.*;
import static org.roofmaths.units.Quantities.*;
System.out.println("roof-maths: every package is imported. Try  pitch(\"7 in 12\")  or  length(\"9' 4 1/2\\\"\")");
