using Chandlery.Yaml;

namespace Chandlery.Core.Law;

/// <summary>A row of the program's data that cites a clause or says how it was checked.</summary>
/// <param name="Folder">The edition or language that it belongs to; for other data its kind, such as <c>substances</c>.</param>
/// <param name="IsLaw">True for a row of an edition of the law.</param>
/// <param name="Place">Where it stands.</param>
/// <param name="Name">What it is about.</param>
/// <param name="Standing">How well it is founded.</param>
/// <param name="Says">What it says of that; empty when nothing.</param>
public sealed record DataRow(string Folder, bool IsLaw, TextPlace Place, string Name, Standing Standing, string Says);
