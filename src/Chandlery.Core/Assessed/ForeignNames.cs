using Chandlery.Core.Law;

namespace Chandlery.Core.Assessed;

/// <summary>Names of substances on labels in languages in which the law's table gives them names of its own that are not at hand.</summary>
internal static class ForeignNames
{
    /// <summary>Those of a label's languages in which the international name is printed, though the table has another.</summary>
    public static IReadOnlyList<string> LanguagesOf(Edition edition, IReadOnlyList<Language> languages) =>
        edition.Harmonised.Bind ? [.. languages.Where(l => l.Code != edition.Substances.Table?.Rules.NamesIn).Select(l => l.Name)] : [];
}
