namespace LogBook.Domain.Drums;

/// <summary>Volume below a level in plain shapes. Lengths in one unit, volumes in its cube; arguments are checked by the caller.</summary>
/// <remarks>Flat ends and bottoms; domed, sloped or inclined vessels need a strapping table. Reference: 07-tank-volume.md.</remarks>
public static class TankGeometry
{
    /// <summary>Upright cylinder, π D² h/4.</summary>
    /// <param name="diameter">D, inside.</param>
    /// <param name="level">h.</param>
    /// <returns>Volume in cubic units.</returns>
    /// <remarks>Reference: 07-tank-volume.csv, vertical_cylinder.</remarks>
    public static double VerticalCylinder(double diameter, double level) => Math.PI * diameter * diameter * level / 4;

    /// <summary>Box, l w h.</summary>
    /// <param name="length">l, inside.</param>
    /// <param name="width">w, inside.</param>
    /// <param name="level">h.</param>
    /// <returns>Volume in cubic units.</returns>
    /// <remarks>Reference: 07-tank-volume.csv, rectangular.</remarks>
    public static double Rectangular(double length, double width, double level) => length * width * level;

    /// <summary>Share of a lying cylinder that is filled, (acos(1 − 2x) − 2 (1 − 2x) √(x − x²))/π.</summary>
    /// <param name="levelOverDiameter">x = h/D, 0 to 1.</param>
    /// <returns>0 to 1; f(x) + f(1 − x) = 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside 0 to 1.</exception>
    /// <remarks>Reference: 07-tank-volume.csv, horizontal_cylinder_fraction.</remarks>
    public static double HorizontalCylinderShare(double levelOverDiameter)
    {
        var x = Quantities.Require.InRange(levelOverDiameter, 0, 1);

        // acos(1 − 2x) is 2 asin √x, which keeps its digits near the bottom, where the other form turns a film of liquid negative;
        // the upper half is the mirror of the lower.
        return x > 0.5
            ? 1 - HorizontalCylinderShare(1 - x)
            : Math.Max(0, 2 * (Math.Asin(Math.Sqrt(x)) - ((1 - (2 * x)) * Math.Sqrt(x * (1 - x)))) / Math.PI);
    }

    /// <summary>Lying cylinder with flat ends.</summary>
    /// <param name="diameter">D, inside.</param>
    /// <param name="length">L, inside.</param>
    /// <param name="level">h, 0 to D.</param>
    /// <returns>Volume in cubic units.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Level outside 0 to D.</exception>
    /// <remarks>Reference: 07-tank-volume.csv, horizontal_cylinder.</remarks>
    public static double HorizontalCylinder(double diameter, double length, double level) =>
        HorizontalCylinderShare(level / diameter) * Math.PI * diameter * diameter / 4 * length;

    /// <summary>Width of the surface in a lying cylinder, 2 √(D h − h²); times its length it is dV/dh.</summary>
    /// <param name="diameter">D, inside.</param>
    /// <param name="level">h, 0 to D.</param>
    /// <returns>Width in the unit of the arguments; zero at bottom and top.</returns>
    /// <remarks>Reference: 07-tank-volume.csv, horizontal_surface_width.</remarks>
    public static double HorizontalCylinderSurfaceWidth(double diameter, double level) =>
        2 * Math.Sqrt(Math.Max(0, level * (diameter - level)));
}
