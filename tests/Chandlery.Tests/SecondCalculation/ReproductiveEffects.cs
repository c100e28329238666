namespace Chandlery.Tests.SecondCalculation;

/// <summary>The letters behind H360 and H361 that say what is damaged: Annex III and Annex VI 1.1.2.1.2.</summary>
internal static class ReproductiveEffects
{
    /// <summary>
    /// The statement with the effects of all causes together: H360F beside H360D is H360FD. One cause of unsaid effect leaves
    /// the general statement, which speaks of both.
    /// </summary>
    /// <param name="mixture">The mixture.</param>
    /// <param name="found">Its class Repr.</param>
    /// <param name="general">The statement without letters.</param>
    public static string Statement(GivenMixture mixture, FoundClass found, string general)
    {
        List<string> letters =
        [
            .. mixture
                .Substances.Where(s => found.Causes.Any(c => c.Name == s.Name))
                .SelectMany(s => s.Hazards)
                .Where(h => h.Code == found.Code)
                .Select(h => h.Statement[general.Length..]),
        ];
        if (letters.Count == 0 || letters.Contains(""))
        {
            return general;
        }

        string all = string.Concat(letters);
        string fertility = Graver(all, 'F');
        string unborn = Graver(all, 'D');
        return general + (unborn == "D" && fertility == "f" ? unborn + fertility : fertility + unborn);
    }

    private static string Graver(string letters, char known) =>
        letters.Contains(known) ? known.ToString()
        : letters.Contains(char.ToLowerInvariant(known)) ? char.ToLowerInvariant(known).ToString()
        : "";
}
