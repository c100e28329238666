namespace Chandlery.Tests.SecondCalculation;

/// <summary>What an edition of the law makes otherwise than the Union's CLP; as it stands without more it is the Union's.</summary>
/// <param name="Folder">The edition's name in the program.</param>
internal sealed record SecondEdition(string Folder)
{
    /// <summary>Regulation (EC) No 1272/2008, consolidated to 1 May 2026.</summary>
    public static readonly SecondEdition Union = new("eu-clp");

    /// <summary>
    /// Great Britain: the Union's text as it stood at the end of 2020, without the classes of Delegated Regulation (EU) 2023/707 (from
    /// memory).
    /// </summary>
    public static readonly SecondEdition GreatBritain = new("gb-clp") { NotAdopted = ["ED HH", "ED ENV", "PBT", "vPvB", "PMT", "vPvM"] };

    /// <summary>
    /// UN GHS, revision 10, with all its building blocks and the lower of two limits where authorities may choose; from memory. Of its
    /// notes that leave something open the stricter reading counts.
    /// </summary>
    public static readonly SecondEdition Ghs = new("un-ghs")
    {
        NotAdopted = ["ED HH", "ED ENV", "PBT", "vPvB", "PMT", "vPvM"],
        OwnAloneRules =
        [
            // Table 3.4.5.
            new("Resp. Sens.", "1A", "1A", 0.1),
            new("Resp. Sens.", "1", "1", 0.1),
            new("Resp. Sens.", "1B", "1B", 1),
            new("Skin Sens.", "1A", "1A", 0.1),
            new("Skin Sens.", "1", "1", 0.1),
            new("Skin Sens.", "1B", "1B", 1),
            // Table 3.6.1.
            new("Carc.", "1A", "1A", 0.1),
            new("Carc.", "1B", "1B", 0.1),
            new("Carc.", "2", "2", 0.1),
            // Table 3.7.1.
            new("Repr.", "1A", "1A", 0.1),
            new("Repr.", "1B", "1B", 0.1),
            new("Repr.", "2", "2", 0.1),
            new("Lact.", "", "", 0.1),
            // Tables 3.8.2 and 3.9.3: what is of Category 1 and has a limit of its own for that is of Category 2 below it.
            new("STOT SE", "1", "1", 1),
            new("STOT SE", "1", "2", 1),
            new("STOT SE", "2", "2", 1),
            new("STOT RE", "1", "1", 1),
            new("STOT RE", "1", "2", 1),
            new("STOT RE", "2", "2", 1),
        ],
        HasMildCategories = true,

        // Of 2A and 2B: 2B, which the note to Table 3.3.3 allows where all irritants are of it, is left out.
        EyeIrritant = "2A",
        HighestFlash = 93,

        // 2.6.4.2.2, note: "for some regulatory purposes (e.g. transport)".
        RelievesWhatDoesNotBurnOn = false,
        ElicitationStatement = "GHS-ELICITATION",
        SaysVapour = false,
        NamesChiefs = false,

        // H401 beside H411 and H402 beside H412 may go too; they stay here.
        Omitted = [("H410", "H400"), ("H314", "H318")],
    };

    /// <summary>
    /// The United States' Hazard Communication Standard, 29 CFR 1910.1200, Appendices A and B as of 2024, from memory; for specific organs
    /// also OSHA's letter of 4 March 2014. The label of a candle for the home is another one (16 CFR 1500.121).
    /// </summary>
    public static readonly SecondEdition UnitedStates = Ghs with
    {
        Folder = "united-states",
        NotAdopted = [.. Ghs.NotAdopted, "Aquatic", "Ozone"],

        // What is of Acute Tox. 5 elsewhere is in no category and adds nothing (A.1.3.6.1).
        HasMildCategories = false,
        PrintsHazards = false,
    };

    /// <summary>Classes that it has not taken up, by the beginning of their codes.</summary>
    public IReadOnlyList<string> NotAdopted { get; init; } = [];

    /// <summary>Its limits of single ingredients, instead of all the Union's for the same class.</summary>
    public IReadOnlyList<AloneRule> OwnAloneRules { get; init; } = [];

    /// <summary>True where Acute Tox. 5, Skin Irrit. 3, Aquatic Acute 2 and 3 are known.</summary>
    public bool HasMildCategories { get; init; }

    /// <summary>The category of an eye irritant.</summary>
    public string EyeIrritant { get; init; } = "2";

    /// <summary>The highest flash point of a flammable liquid, degrees Celsius, included (Table 2.6.1).</summary>
    public double HighestFlash { get; init; } = 60;

    /// <summary>True where test L.2 relieves a liquid of Category 3 (2.6.4.5).</summary>
    public bool RelievesWhatDoesNotBurnOn { get; init; } = true;

    /// <summary>Methods by which a flash point is measured (Table 2.6.3).</summary>
    public IReadOnlyList<string> ClosedCupMethods { get; init; } =
    ["ISO 1516", "ISO 1523", "ISO 2719", "ISO 3679", "ISO 3680", "ISO 13736"];

    /// <summary>False where the label of a product for the home is another than that of the classes.</summary>
    public bool PrintsHazards { get; init; } = true;

    /// <summary>The statement that names sensitisers below their limits (Annex II 2.8; UN GHS 3.4.4.2).</summary>
    public string ElicitationStatement { get; init; } = "EUH208";

    /// <summary>True where EUH018 is known.</summary>
    public bool SaysVapour { get; init; } = true;

    /// <summary>True where the label names those that are chiefly responsible (Art. 18(3)(b)).</summary>
    public bool NamesChiefs { get; init; } = true;

    /// <summary>Statements that go where another stays (Annex III Part 1; UN GHS 1.4.10.5.3.3).</summary>
    public IReadOnlyList<(string Stays, string Goes)> Omitted { get; init; } =
    [("H314", "H318"), ("EUH441", "EUH440"), ("EUH451", "EUH450")];

    /// <summary>True when a class is taken up.</summary>
    public bool Adopts(FoundClass found) => !NotAdopted.Any(n => found.Code.StartsWith(n, StringComparison.Ordinal));
}
