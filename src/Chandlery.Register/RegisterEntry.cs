namespace Chandlery.Register;

/// <summary>A declaration as it was when an entry was made.</summary>
/// <param name="Path">Its file, relative to the maker's folder.</param>
/// <param name="Sha256">Hash of its text.</param>
public sealed record UsedDeclaration(string Path, string Sha256);

/// <summary>An oil with the document it was declared from.</summary>
/// <param name="Oil">Name of the oil's declaration.</param>
/// <param name="Name">Trade name.</param>
/// <param name="Document">Supplier's document.</param>
/// <param name="Revised">Its revision date, year-month-day.</param>
public sealed record UsedOil(string Oil, string Name, string Document, string Revised);

/// <summary>A substance of the finished candle.</summary>
/// <param name="Name">Name.</param>
/// <param name="Cas">CAS number; empty when none is known.</param>
/// <param name="HighPercent">Most of it in the candle, percent by mass.</param>
public sealed record HeldSubstance(string Name, string Cas, double HighPercent);

/// <summary>A document that was issued.</summary>
/// <param name="Name">File name.</param>
/// <param name="Sha256">Hash of its bytes.</param>
public sealed record IssuedDocument(string Name, string Sha256);

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

/// <summary>An entry of the register.</summary>
/// <param name="Number">Its number, from 1.</param>
/// <param name="At">When it was made, in UTC.</param>
/// <param name="By">Who made it.</param>
/// <param name="Content">What it says.</param>
/// <param name="PreviousHash">Hash of the entry before; zeros for the first.</param>
/// <param name="Hash">Hash of this entry with the hash of the one before.</param>
public sealed record RegisterEntry(long Number, string At, string By, RegisterContent Content, string PreviousHash, string Hash);

/// <summary>What to look for; empty fields match everything.</summary>
/// <param name="Batch">Batch code or name.</param>
/// <param name="Substance">Part of a substance's name, or its CAS number.</param>
/// <param name="Oil">Name of an oil's declaration, or part of its trade name.</param>
/// <param name="Document">Part of the supplier document's reference.</param>
/// <param name="Revised">Revision date of that document.</param>
public sealed record RegisterQuery(
    string? Batch = null,
    string? Substance = null,
    string? Oil = null,
    string? Document = null,
    string? Revised = null
);
