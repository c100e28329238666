namespace Chandlery.Cli;

/// <summary>A row that is from memory, as JSON says it.</summary>
/// <param name="Edition">The edition, or the language or kind of data.</param>
/// <param name="IsLaw">True for a row of an edition of the law.</param>
/// <param name="File">The file.</param>
/// <param name="Line">Its line, from 1.</param>
/// <param name="Row">What the row is about.</param>
/// <param name="Reason">What it says of itself.</param>
internal sealed record MemoryReport(string Edition, bool IsLaw, string File, int Line, string Row, string Reason);
