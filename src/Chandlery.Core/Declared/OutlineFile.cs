using Chandlery.Yaml;

namespace Chandlery.Core.Declared;

/// <summary>The file that holds a label's cut line.</summary>
/// <param name="Name">Its name; it lies beside the declaration.</param>
/// <param name="Place">Where it is named.</param>
public sealed record OutlineFile(string Name, TextPlace Place);
