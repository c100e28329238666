namespace Chandlery.Paper.Designs.Ornaments;

/// <summary>Places what is drawn along an axis from 0 to 1: moved, turned and scaled.</summary>
/// <param name="X">Where 0 lies, millimetres.</param>
/// <param name="Y">Where 0 lies, millimetres.</param>
/// <param name="Angle">Where 1 lies from there, radians clockwise from the right.</param>
/// <param name="Length">How far, millimetres.</param>
internal readonly record struct Turtle(double X, double Y, double Angle, double Length)
{
    /// <summary>A place on the page.</summary>
    public (double X, double Y) At(double along, double aside) =>
        (
            X + (Length * ((along * Math.Cos(Angle)) - (aside * Math.Sin(Angle)))),
            Y + (Length * ((along * Math.Sin(Angle)) + (aside * Math.Cos(Angle))))
        );

    /// <summary>The same a little away.</summary>
    public Turtle Shifted(double xMm, double yMm) => this with { X = X + xMm, Y = Y + yMm };
}
