namespace Chandlery.Paper.Proofs.Reading;

/// <summary>How coordinates become those of the page (ISO 32000-1, 8.3.3), by the six numbers in the order in which a PDF has them.</summary>
internal readonly record struct Placement(double A, double B, double C, double D, double E, double F)
{
    /// <summary>Leaves everything where it is.</summary>
    public static Placement None => new(1, 0, 0, 1, 0, 0);

    /// <summary>This one, and the outer one behind it.</summary>
    public Placement Then(Placement outer) =>
        new(
            (A * outer.A) + (B * outer.C),
            (A * outer.B) + (B * outer.D),
            (C * outer.A) + (D * outer.C),
            (C * outer.B) + (D * outer.D),
            (E * outer.A) + (F * outer.C) + outer.E,
            (E * outer.B) + (F * outer.D) + outer.F
        );

    /// <summary>Where a point comes to lie.</summary>
    public (double X, double Y) Of(double x, double y) => ((x * A) + (y * C) + E, (x * B) + (y * D) + F);

    /// <summary>How long an upright unit becomes.</summary>
    public double Upright => Math.Sqrt((C * C) + (D * D));
}
