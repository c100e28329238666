namespace Chandlery.Tests.SecondCalculation;

/// <summary>Which substances a label names: Art. 18(3)(b), and Annex II 2.8 for sensitisers.</summary>
/// <param name="Sensitisers">Named whatever their number.</param>
/// <param name="Chiefs">For each class that asks for names its chiefly responsible substances; where they tie, one is enough.</param>
/// <param name="Allowed">All that may be named.</param>
internal sealed record NamesOnLabel(
    IReadOnlyList<string> Sensitisers,
    IReadOnlyDictionary<string, IReadOnlyList<string>> Chiefs,
    IReadOnlyList<string> Allowed
)
{
    /// <summary>As many names normally suffice beside the sensitisers; every class has its chief named even if that takes more.</summary>
    private const int NormallyEnough = 4;

    // Irritation of skin and eyes, physical hazards, hazards to water and the ozone layer ask for no names. ED, PBT, vPvB, PMT and vPvM do from
    // 1 January 2027; asking for them before is allowed and stricter.
    private static readonly string[] Asking =
    [
        "Acute Tox.",
        "Skin Corr.",
        "Eye Dam.",
        "Muta.",
        "Carc.",
        "Repr.",
        "Lact.",
        "Resp. Sens.",
        "Skin Sens.",
        "STOT",
        "Asp. Tox.",
        "ED ",
        "PBT",
        "vPvB",
        "PMT",
        "vPvM",
    ];

    /// <summary>The names that these classes ask for.</summary>
    public static NamesOnLabel Of(IReadOnlyList<FoundClass> classes, IReadOnlyList<string> sensitisers)
    {
        List<FoundClass> asking = [.. classes.Where(c => Array.Exists(Asking, a => c.Code.StartsWith(a, StringComparison.Ordinal)))];
        return new NamesOnLabel(
            sensitisers,
            asking.ToDictionary(c => c.Code, c => (IReadOnlyList<string>)[.. c.Chiefs]),
            [.. asking.SelectMany(c => c.Causes).Select(c => c.Name).Concat(sensitisers).Distinct()]
        );
    }

    /// <summary>What is wrong with these names; empty when the law is met.</summary>
    public IEnumerable<string> Faults(IReadOnlyCollection<string> named)
    {
        foreach (string missing in Sensitisers.Except(named))
        {
            yield return $"sensitiser not named: {missing}";
        }

        foreach ((string code, IReadOnlyList<string> chiefs) in Chiefs.Where(c => !c.Value.Intersect(named).Any()))
        {
            yield return $"no chief cause of {code} named: {string.Join(" or ", chiefs)}";
        }

        foreach (string needless in named.Except(Allowed))
        {
            yield return $"named without need: {needless}";
        }

        int others = named.Except(Sensitisers).Count();
        if (others > Math.Max(NormallyEnough, Chiefs.Count))
        {
            yield return $"{others} names beside the sensitisers";
        }
    }
}
