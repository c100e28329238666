using Chandlery.Core.Composed;
using Chandlery.Core.Declared;
using Chandlery.Core.Judged;
using Chandlery.Core.Law;
using Chandlery.Core.Limits;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Assessed;

/// <summary>What is assessed, whatever the edition.</summary>
internal sealed record Subject(
    Candle Candle,
    Batch? Batch,
    Maker Maker,
    Vessel Vessel,
    JudgedRecipe Judged,
    IReadOnlyList<LimitCheck> Limits
)
{
    /// <summary>The wax or blend of waxes, as declared.</summary>
    public required Wax Wax { get; init; }

    /// <summary>The maker as declared, whoever stands on the label.</summary>
    public required Maker Declarant { get; init; }

    /// <summary>What kind of product it is.</summary>
    public required ProductKind Kind { get; init; }

    /// <summary>What is in it.</summary>
    public Composition Composition => Judged.Composition;

    /// <summary>Its shares.</summary>
    public Recipe Recipe => Composition.Recipe;

    /// <summary>What is in the vessel.</summary>
    public required Millilitres Contents { get; init; }
}
