namespace Chandlery.Files;

/// <summary>A value of a declaration as a cell of a table.</summary>
/// <param name="Column">Name of its column.</param>
/// <param name="Order">Where the column stands among others; compared letter by letter.</param>
/// <param name="Text">What stands in the cell.</param>
/// <param name="IsNumber">True when it is a number with a decimal point.</param>
internal sealed record CandleCell(string Column, string Order, string Text, bool IsNumber);
