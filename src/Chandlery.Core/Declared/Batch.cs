using Chandlery.Core.Quantities;
using Chandlery.Yaml;

namespace Chandlery.Core.Declared;

/// <summary>What was really weighed for a batch; it wins over the candle's plan.</summary>
public sealed record Batch : IDeclaration
{
    /// <summary>File name without its ending.</summary>
    public required string Id { get; init; }

    /// <summary>How it was written.</summary>
    public Writing Writing { get; init; } = Writing.Plain;

    /// <summary>Where it is declared.</summary>
    public required TextPlace Place { get; init; }

    /// <summary>Which candle was made.</summary>
    public required Reference Candle { get; init; }

    /// <summary>Batch code on the label.</summary>
    public required string Code { get; init; }

    /// <summary>Day of pouring.</summary>
    public required DateOnly Poured { get; init; }

    /// <summary>How many candles came of it; null when not noted.</summary>
    public int? Made { get; init; }

    /// <summary>The lots that went into it; empty when none is noted.</summary>
    public IReadOnlyList<Reference> Lots { get; init; } = [];

    /// <summary>Grams of wax in the scented melt.</summary>
    public required Grams WaxWeight { get; init; }

    /// <summary>Grams of each oil.</summary>
    public required IReadOnlyList<OilPart> Oils { get; init; }

    /// <summary>Grams of each extra.</summary>
    public required IReadOnlyList<ExtraPart> Extras { get; init; }

    /// <summary>Grams of the second pour.</summary>
    public required TopUp? TopUp { get; init; }
}
