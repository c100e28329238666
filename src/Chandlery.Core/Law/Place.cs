using Chandlery.Core.Declared;

namespace Chandlery.Core.Law;

/// <summary>A place of sale.</summary>
/// <param name="Code">Country code.</param>
/// <param name="Name">English name.</param>
/// <param name="EditionId">The edition that rules there.</param>
/// <param name="Languages">Languages that a label needs.</param>
/// <param name="EitherOf">True when one of the languages is enough.</param>
public sealed record Place(PlaceCode Code, string Name, string EditionId, IReadOnlyList<LanguageCode> Languages, bool EitherOf)
{
    /// <summary>Other names and codes that people write; empty for none.</summary>
    public IReadOnlyList<string> AlsoCalled { get; init; } = [];

    /// <summary>Whether a declaration means this place.</summary>
    public bool IsMeantBy(PlaceName name) => HasCode(name) || IsCalled(name);

    /// <summary>Whether it has a code, in small letters or capitals.</summary>
    public bool HasCode(string code) => Code.Text.Equals(code, StringComparison.OrdinalIgnoreCase);

    /// <summary>Whether people mean this place by a name.</summary>
    public bool IsCalled(string name) => AlsoCalled.Prepend(Name).Contains(name.Trim(), StringComparer.OrdinalIgnoreCase);
}
