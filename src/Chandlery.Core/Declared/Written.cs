using Chandlery.Yaml;

namespace Chandlery.Core.Declared;

/// <summary>A code as it was written, with its place for error messages.</summary>
/// <typeparam name="T">The kind of code.</typeparam>
/// <param name="Code">The code.</param>
/// <param name="Place">Where it stands.</param>
public sealed record Written<T>(T Code, TextPlace Place);
