using Chandlery.Yaml;

namespace Chandlery.Core.Declared;

/// <summary>A value that could well be a slip of the pen: it is asked back, and stands only when the maker confirms it.</summary>
/// <param name="Field">The field's name, by which it is confirmed.</param>
/// <param name="What">Why it is asked.</param>
/// <param name="Place">The declaration or the field.</param>
public sealed record Doubt(string Field, string What, TextPlace Place);
