namespace Chandlery.Intake.Drafts;

/// <summary>An oil's declaration as drafted from its supplier's PDFs.</summary>
/// <param name="Sources">The PDFs, in the order that <see cref="Found{T}.Document"/> counts.</param>
/// <param name="Name">Trade name.</param>
/// <param name="Supplier">Supplier.</param>
/// <param name="Document">Number of the sheet.</param>
/// <param name="Version">Version of the sheet.</param>
/// <param name="Revised">Revision date.</param>
/// <param name="Classes">Classes of the oil itself, from section 2.</param>
/// <param name="Ingredients">Ingredient table.</param>
/// <param name="FlashPoint">Flash point.</param>
/// <param name="DensityGramsPerMl">Density.</param>
/// <param name="Ifra">IFRA certificate.</param>
/// <param name="Doubts">What speaks against the draft as a whole.</param>
public sealed record OilDraft(
    IReadOnlyList<DraftSource> Sources,
    Found<string>? Name,
    Found<string>? Supplier,
    Found<string>? Document,
    Found<string>? Version,
    Found<DateOnly>? Revised,
    Found<IReadOnlyList<string>>? Classes,
    IReadOnlyList<DraftIngredient> Ingredients,
    Found<DraftFlashPoint>? FlashPoint,
    Found<double>? DensityGramsPerMl,
    DraftIfra? Ifra,
    IReadOnlyList<string> Doubts
)
{
    /// <summary>A draft that holds the head of a document and nothing else yet.</summary>
    internal static OilDraft Headed(SheetHead head) =>
        new([], head.Name, head.Supplier, head.Document, head.Version, head.Revised, null, [], null, null, null, []);
}
