namespace Chandlery.Paper.Designs.Ornaments;

/// <summary>The ornaments there are.</summary>
internal static class OrnamentList
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<IOrnament> All { get; } =
    [new Tideline(), new Ledger(), new TwoFields(), new WickPlan(), new Leafwork(), new Lamp(), new GuillocheSeal(), new Strata()];

    /// <summary>The ornament of a word; null when there is none.</summary>
    public static IOrnament? Find(string kind) => All.FirstOrDefault(o => o.Kind == kind);
}
