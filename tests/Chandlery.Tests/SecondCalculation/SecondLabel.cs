namespace Chandlery.Tests.SecondCalculation;

/// <summary>The label elements of a mixture.</summary>
/// <param name="Pictograms">Pictograms, in the order of their codes.</param>
/// <param name="SignalWord">Danger, Warning or empty.</param>
/// <param name="Statements">Hazard statements and EUH statements, in the order of their codes.</param>
internal sealed record SecondLabel(IReadOnlyList<string> Pictograms, string SignalWord, IReadOnlyList<string> Statements)
{
    /// <summary>The label of these elements.</summary>
    /// <param name="elements">The elements of each class.</param>
    /// <param name="namesSensitisers">True when a sensitiser reaches its limit for elicitation.</param>
    /// <param name="formsVapour">True when EUH018 is due.</param>
    /// <param name="edition">The law.</param>
    public static SecondLabel Of(IReadOnlyList<ClassElements> elements, bool namesSensitisers, bool formsVapour, SecondEdition edition)
    {
        string word = new[] { "Danger", "Warning" }.FirstOrDefault(w => elements.Any(e => e.SignalWord == w)) ?? "";
        return new SecondLabel(
            [.. Precedence(elements).Distinct().Order(StringComparer.Ordinal)],
            word,
            [.. StatementsOf(elements, namesSensitisers, formsVapour, edition).Order(StringComparer.Ordinal)]
        );
    }

    /// <summary>Art. 26(1)(b), (c) and (d).</summary>
    private static IEnumerable<string> Precedence(IReadOnlyList<ClassElements> elements)
    {
        bool skull = elements.Any(e => e.Pictogram == "GHS06");
        bool corrosion = elements.Any(e => e.Pictogram == "GHS05");
        bool respiratory = elements.Any(e => e.Statement == "H334");
        return elements
            .Where(e => e.Pictogram.Length > 0)
            .Where(e =>
                e.Pictogram != "GHS07"
                || !(skull || (corrosion && Irritates(e)) || (respiratory && (Irritates(e) || e.Statement == "H317")))
            )
            .Select(e => e.Pictogram);
    }

    private static bool Irritates(ClassElements elements) => elements.Statement is "H315" or "H319";

    /// <summary>
    /// Annex III Part 1 (a) to (d) leaves out what is repeated. Acute 1 with Chronic 2 or 3 is labelled H410 alone, as the
    /// label columns of Annex VI do. EUH208 (Annex II 2.8) only where the mixture itself is no sensitiser.
    /// </summary>
    private static HashSet<string> StatementsOf(
        IReadOnlyList<ClassElements> elements,
        bool namesSensitisers,
        bool formsVapour,
        SecondEdition edition
    )
    {
        HashSet<string> all = [.. elements.Select(e => e.Statement)];
        if (all.Contains("H400") && all.Overlaps(["H410", "H411", "H412"]))
        {
            all.ExceptWith(["H400", "H411", "H412"]);
            all.Add("H410");
        }

        foreach ((string stays, string goes) in edition.Omitted)
        {
            if (all.Contains(stays))
            {
                all.Remove(goes);
            }
        }

        if (namesSensitisers && !all.Overlaps(["H317", "H334"]))
        {
            all.Add(edition.ElicitationStatement);
        }

        if (formsVapour)
        {
            all.Add("EUH018");
        }

        return all;
    }
}
