namespace Chandlery.Intake.Drafts;

/// <summary>An oil's declaration as drafted from its supplier's PDFs.</summary>
public sealed record OilDraft
{
    /// <summary>The PDFs, in the order that <see cref="Found{T}.Document"/> counts.</summary>
    public required IReadOnlyList<DraftSource> Sources { get; init; }

    /// <summary>Trade name.</summary>
    public required Found<string>? Name { get; init; }

    /// <summary>Supplier.</summary>
    public required Found<string>? Supplier { get; init; }

    /// <summary>Number of the sheet.</summary>
    public required Found<string>? Document { get; init; }

    /// <summary>Version of the sheet.</summary>
    public required Found<string>? Version { get; init; }

    /// <summary>Revision date.</summary>
    public required Found<DateOnly>? Revised { get; init; }

    /// <summary>Classes of the oil itself, from section 2.</summary>
    public required Found<IReadOnlyList<string>>? Classes { get; init; }

    /// <summary>Ingredient table.</summary>
    public required IReadOnlyList<DraftIngredient> Ingredients { get; init; }

    /// <summary>Flash point.</summary>
    public required Found<DraftFlashPoint>? FlashPoint { get; init; }

    /// <summary>Density.</summary>
    public required Found<double>? DensityGramsPerMl { get; init; }

    /// <summary>IFRA certificate.</summary>
    public required DraftIfra? Ifra { get; init; }

    /// <summary>What speaks against the draft as a whole.</summary>
    public required IReadOnlyList<string> Doubts { get; init; }

    /// <summary>A draft that holds the head of a document and nothing else yet.</summary>
    internal static OilDraft Headed(SheetHead head) =>
        new()
        {
            Sources = [],
            Name = head.Name,
            Supplier = head.Supplier,
            Document = head.Document,
            Version = head.Version,
            Revised = head.Revised,
            Classes = null,
            Ingredients = [],
            FlashPoint = null,
            DensityGramsPerMl = null,
            Ifra = null,
            Doubts = [],
        };
}
