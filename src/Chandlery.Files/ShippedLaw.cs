using Chandlery.Core.Law;
using Chandlery.Core.Law.Reading;
using Chandlery.Paper.Papers;
using Chandlery.Yaml;

namespace Chandlery.Files;

/// <summary>Opens the law: the program's own, or with files of the user's.</summary>
public static class ShippedLaw
{
    /// <summary>The lawbook, or null with problems.</summary>
    /// <param name="data">Texts under <c>data/</c>, as <see cref="ShippedFiles.Data"/> gives them.</param>
    /// <param name="overrides">The user's folder that they came from; null for none. What users wrote is checked whole at once.</param>
    /// <param name="problems">Receives what is wrong.</param>
    public static Lawbook? Open(IReadOnlyDictionary<string, string> data, string? overrides, Problems problems) =>
        overrides is null ? LawReader.ReadWhenAsked(data, PaperList.Own.Ids, problems) : LawReader.Read(data, PaperList.Own.Ids, problems);

    /// <summary>The lawbook for whoever needs no other data; null with problems.</summary>
    /// <param name="overrides">The user's folder whose files win; null for none.</param>
    /// <param name="problems">Receives what is wrong.</param>
    public static Lawbook? Open(string? overrides, Problems problems)
    {
        Lawbook? lawbook = Open(ShippedFiles.Data(overrides, problems), overrides, problems);
        return problems.None ? lawbook : null;
    }
}
