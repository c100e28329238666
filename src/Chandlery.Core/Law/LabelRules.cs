using Chandlery.Core.Hazards;

namespace Chandlery.Core.Law;

/// <summary>What a label is under an edition.</summary>
public sealed record LabelRules
{
    /// <summary>What the label is there to show.</summary>
    public required LabelContent Shows { get; init; }

    /// <summary>True where the label shows hazards.</summary>
    public bool ShowsHazards => Shows == LabelContent.Hazards;

    /// <summary>Units of the net quantity, in the order printed.</summary>
    public required IReadOnlyList<QuantityUnit> QuantityUnits { get; init; }

    /// <summary>Where the units stand.</summary>
    public required Citation QuantityUnitsClause { get; init; }

    /// <summary>Keys of the fire-safety warnings that the label prints in words; empty for none.</summary>
    public required IReadOnlyList<string> Warnings { get; init; }

    /// <summary>Where it stands in which languages the label must be.</summary>
    public required Citation LanguagesClause { get; init; }

    /// <summary>Where the wording of statements stands.</summary>
    public required Citation WordingClause { get; init; }

    /// <summary>Where it stands that statements are on the label together, in order.</summary>
    public required Citation StatementsClause { get; init; }

    /// <summary>Where it stands which pictograms are on the label.</summary>
    public required Citation PictogramsClause { get; init; }

    /// <summary>Where the colours of a pictogram stand.</summary>
    public required Citation PictogramColoursClause { get; init; }

    /// <summary>Where the colour of the text stands.</summary>
    public required Citation TextColourClause { get; init; }

    /// <summary>Where it stands that text must read level.</summary>
    public required Citation DirectionClause { get; init; }

    /// <summary>Where it stands that the label names the product.</summary>
    public required Citation ProductNameClause { get; init; }

    /// <summary>Where it stands that the label names the supplier with address and telephone.</summary>
    public required Citation SupplierClause { get; init; }

    /// <summary>Where leaflets and tie-on tags stand.</summary>
    public required Citation LeafletClause { get; init; }
}
