using Chandlery.Core.Quantities;
using Chandlery.Yaml;

namespace Chandlery.Core.Declared;

/// <summary>What the candle is poured into.</summary>
public sealed record Vessel : IDeclaration
{
    /// <summary>File name without its ending.</summary>
    public required string Id { get; init; }

    /// <summary>How it was written.</summary>
    public Writing Writing { get; init; } = Writing.Plain;

    /// <summary>Where it is declared.</summary>
    public required TextPlace Place { get; init; }

    /// <summary>Name.</summary>
    public required string Name { get; init; }

    /// <summary>What it is made of.</summary>
    public required string Material { get; init; }

    /// <summary>Volume to the brim; the package's capacity in the sense of the label-size table.</summary>
    public required Millilitres Brimful { get; init; }

    /// <summary>Volume to the intended fill line, when declared.</summary>
    public required Millilitres? Fill { get; init; }

    /// <summary>
    /// How many cups it is made of, each with wicks of its own; 1 for all but boxes of small candles. Volumes and the outer size are
    /// those of all together, the inner size that of one.
    /// </summary>
    public int Pieces { get; init; } = 1;

    /// <summary>Inner size, when declared.</summary>
    public required VesselSize? Inner { get; init; }

    /// <summary>Outer size, when declared.</summary>
    public required VesselSize? Outer { get; init; }

    /// <summary>True when its closure is declared to be child-resistant by the standard that the law names.</summary>
    public required bool IsChildResistant { get; init; }

    /// <summary>True when it is declared to bear a warning of danger that can be felt.</summary>
    public required bool HasTactileWarning { get; init; }

    /// <summary>True when it goes no further than the bench: what is cast in it stands by itself and is sold without it.</summary>
    public bool IsMould { get; init; }

    /// <summary>
    /// What stands by itself, in the place of a vessel: its body is what is measured and labelled, and its volume is the package's
    /// capacity, since nothing around it can hold less. At the bench it is the mould, whose inside has the body's size.
    /// </summary>
    public static Vessel Standing(Candle candle, VesselSize size) =>
        new()
        {
            Id = candle.Id,
            Place = candle.Place,
            Name = "no vessel",
            Material = "stands by itself",
            Brimful = new Millilitres(size.Section.AreaSquareMillimetres * size.Height.Value / 1000),
            Fill = null,
            Inner = size,
            Outer = size,
            IsMould = true,
            IsChildResistant = false,
            HasTactileWarning = false,
        };

    /// <summary>Volume below a headspace kept free under the brim; null when the inner size is not declared.</summary>
    public Millilitres? Below(Millimetres headspace) =>
        AreaInside is { } area ? new Millilitres(Math.Max(0, Brimful.Value - (area * headspace.Value / 1000))) : null;

    /// <summary>Level area of the inside of all its pieces, mm²; null when the inner size is not declared.</summary>
    public double? AreaInside => Inner is { } inner ? inner.Section.AreaSquareMillimetres * Pieces : null;
}
