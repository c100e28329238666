using Chandlery.Core.Declared;

namespace Chandlery.Intake.Drafts;

/// <summary>M-factors as a sheet gives them.</summary>
/// <param name="Acute">For Aquatic Acute 1; null when not given.</param>
/// <param name="Chronic">For Aquatic Chronic 1; null when not given.</param>
public sealed record MFactors(double? Acute, double? Chronic);

/// <summary>An ingredient as read. Texts stay as printed where they could not be understood, so that the declaration's own reader refuses them.</summary>
/// <param name="Name">Name.</param>
/// <param name="Cas">CAS number, also when its check digit fails.</param>
/// <param name="Ec">EC number, also when its check digit fails.</param>
/// <param name="Share">Share in the declaration's form; null when the sheet's text is no share.</param>
/// <param name="Classes">Class texts; empty for "not classified"; null when the sheet says nothing.</param>
/// <param name="Limits">Specific concentration limits.</param>
/// <param name="M">M-factors.</param>
/// <param name="Toxicity">Acute toxicity estimates.</param>
/// <param name="Doubts">What speaks against the row as a whole.</param>
public sealed record DraftIngredient(
    Found<string> Name,
    Found<string>? Cas,
    Found<string>? Ec,
    Found<string>? Share,
    Found<IReadOnlyList<string>>? Classes,
    Found<IReadOnlyList<string>>? Limits,
    Found<MFactors>? M,
    Found<IReadOnlyList<ToxicityEstimate>>? Toxicity,
    IReadOnlyList<string> Doubts
);

/// <summary>An IFRA certificate as read.</summary>
/// <param name="Amendment">Number of the amendment.</param>
/// <param name="Date">Its date.</param>
/// <param name="Limits">Text of the limit by category: a figure, "not restricted" or "not permitted".</param>
public sealed record DraftIfra(Found<int>? Amendment, Found<DateOnly>? Date, IReadOnlyList<(string Category, Found<string> Limit)> Limits);

/// <summary>Flash point as read.</summary>
/// <param name="Celsius">Temperature.</param>
/// <param name="IsLowerBound">True for "above".</param>
/// <param name="Method">"closed cup", "open cup" or null.</param>
public sealed record DraftFlashPoint(double Celsius, bool IsLowerBound, string? Method);

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
);

/// <summary>What kind of document a PDF is.</summary>
public enum SheetKind
{
    /// <summary>Safety data sheet.</summary>
    SafetyDataSheet,

    /// <summary>IFRA certificate of conformity.</summary>
    IfraCertificate,

    /// <summary>Statement of fragrance allergens.</summary>
    AllergenStatement,
}

/// <summary>A PDF that a draft rests on.</summary>
/// <param name="File">File name without folders.</param>
/// <param name="Sha256">Hash of its bytes, so that the review can be traced to the very file.</param>
/// <param name="Kind">What it is.</param>
public sealed record DraftSource(string File, string Sha256, SheetKind Kind);
