using Chandlery.Yaml;

namespace Chandlery.Core.Declared;

/// <summary>The file that holds a picture of a product.</summary>
/// <param name="Name">Its name; it lies beside the declaration.</param>
/// <param name="Place">Where it is named.</param>
public sealed record PictureFile(string Name, TextPlace Place);
