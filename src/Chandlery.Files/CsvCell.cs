using Chandlery.Yaml;

namespace Chandlery.Files;

/// <summary>A cell of a table.</summary>
/// <param name="Text">What stands in it, without blanks around it.</param>
/// <param name="Place">Where it begins in the file.</param>
internal sealed record CsvCell(string Text, TextPlace Place);
