using Chandlery.Yaml;

namespace Chandlery.Core.Declared;

/// <summary>A reference to another declaration, with its place for error messages.</summary>
/// <param name="Id">The other declaration's file name without its ending.</param>
/// <param name="Place">Where the reference stands.</param>
public sealed record Reference(string Id, TextPlace Place);
