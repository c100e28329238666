namespace Chandlery.Register;

/// <summary>What is written into the register when labels are issued.</summary>
/// <param name="Batch">Batch code; the candle's name when it has none.</param>
/// <param name="Subject">Name of the batch's or candle's declaration.</param>
/// <param name="Candle">The candle's trade name.</param>
/// <param name="Edition">Edition of the law.</param>
/// <param name="AsOf">Day whose law was applied, year-month-day.</param>
/// <param name="LawLookedUp">When the edition's sources were last looked up.</param>
/// <param name="Result">The assessment as JSON.</param>
/// <param name="Declarations">The exact declarations.</param>
/// <param name="Oils">Oils with their documents.</param>
/// <param name="Substances">Substances of the finished candle.</param>
/// <param name="Documents">Documents issued.</param>
public sealed record RegisterContent(
    string Batch,
    string Subject,
    string Candle,
    string Edition,
    string AsOf,
    string LawLookedUp,
    string Result,
    IReadOnlyList<UsedDeclaration> Declarations,
    IReadOnlyList<UsedOil> Oils,
    IReadOnlyList<HeldSubstance> Substances,
    IReadOnlyList<IssuedDocument> Documents
);
