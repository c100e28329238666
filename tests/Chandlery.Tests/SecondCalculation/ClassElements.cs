namespace Chandlery.Tests.SecondCalculation;

/// <summary>What the label of one class shows.</summary>
/// <param name="Class">Code of the class as the mixture has it.</param>
/// <param name="Pictogram">GHS code, empty for none.</param>
/// <param name="SignalWord">Danger, Warning, or empty for none.</param>
/// <param name="Statement">Its statement.</param>
internal sealed record ClassElements(string Class, string Pictogram, string SignalWord, string Statement)
{
    private const string Danger = "Danger";
    private const string Warning = "Warning";

    /// <summary>The label element tables of Annex I.</summary>
    private static readonly Dictionary<string, ClassElements> All = new ClassElements[]
    {
        // Table 2.6.2; Flam. Liq. 4 as in the UN GHS, from memory.
        new("Flam. Liq. 1", "GHS02", Danger, "H224"),
        new("Flam. Liq. 2", "GHS02", Danger, "H225"),
        new("Flam. Liq. 3", "GHS02", Warning, "H226"),
        new("Flam. Liq. 4", "", Warning, "H227"),
        // Table 3.1.3.
        new("Acute Tox. 1 (oral)", "GHS06", Danger, "H300"),
        new("Acute Tox. 2 (oral)", "GHS06", Danger, "H300"),
        new("Acute Tox. 3 (oral)", "GHS06", Danger, "H301"),
        new("Acute Tox. 4 (oral)", "GHS07", Warning, "H302"),
        new("Acute Tox. 1 (dermal)", "GHS06", Danger, "H310"),
        new("Acute Tox. 2 (dermal)", "GHS06", Danger, "H310"),
        new("Acute Tox. 3 (dermal)", "GHS06", Danger, "H311"),
        new("Acute Tox. 4 (dermal)", "GHS07", Warning, "H312"),
        new("Acute Tox. 1 (inhalation)", "GHS06", Danger, "H330"),
        new("Acute Tox. 2 (inhalation)", "GHS06", Danger, "H330"),
        new("Acute Tox. 3 (inhalation)", "GHS06", Danger, "H331"),
        new("Acute Tox. 4 (inhalation)", "GHS07", Warning, "H332"),
        // UN GHS, from memory.
        new("Acute Tox. 5 (oral)", "", Warning, "H303"),
        new("Acute Tox. 5 (dermal)", "", Warning, "H313"),
        new("Skin Irrit. 3", "", Warning, "H316"),
        new("Aquatic Acute 2", "", "", "H401"),
        new("Aquatic Acute 3", "", "", "H402"),
        // Tables 3.2.5 and 3.3.5.
        new("Skin Corr. 1", "GHS05", Danger, "H314"),
        new("Skin Corr. 1A", "GHS05", Danger, "H314"),
        new("Skin Corr. 1B", "GHS05", Danger, "H314"),
        new("Skin Corr. 1C", "GHS05", Danger, "H314"),
        new("Skin Irrit. 2", "GHS07", Warning, "H315"),
        new("Eye Dam. 1", "GHS05", Danger, "H318"),
        new("Eye Irrit. 2", "GHS07", Warning, "H319"),
        // UN GHS, from memory.
        new("Eye Irrit. 2A", "GHS07", Warning, "H319"),
        // Table 3.4.7.
        new("Resp. Sens. 1", "GHS08", Danger, "H334"),
        new("Resp. Sens. 1A", "GHS08", Danger, "H334"),
        new("Resp. Sens. 1B", "GHS08", Danger, "H334"),
        new("Skin Sens. 1", "GHS07", Warning, "H317"),
        new("Skin Sens. 1A", "GHS07", Warning, "H317"),
        new("Skin Sens. 1B", "GHS07", Warning, "H317"),
        // Tables 3.5.3, 3.6.3 and 3.7.3.
        new("Muta. 1A", "GHS08", Danger, "H340"),
        new("Muta. 1B", "GHS08", Danger, "H340"),
        new("Muta. 2", "GHS08", Warning, "H341"),
        new("Carc. 1A", "GHS08", Danger, "H350"),
        new("Carc. 1B", "GHS08", Danger, "H350"),
        new("Carc. 2", "GHS08", Warning, "H351"),
        new("Repr. 1A", "GHS08", Danger, "H360"),
        new("Repr. 1B", "GHS08", Danger, "H360"),
        new("Repr. 2", "GHS08", Warning, "H361"),
        new("Lact.", "", "", "H362"),
        // Tables 3.8.4 and 3.9.5.
        new("STOT SE 1", "GHS08", Danger, "H370"),
        new("STOT SE 2", "GHS08", Warning, "H371"),
        new("STOT SE 3 (respiratory irritation)", "GHS07", Warning, "H335"),
        new("STOT SE 3 (narcotic effects)", "GHS07", Warning, "H336"),
        new("STOT RE 1", "GHS08", Danger, "H372"),
        new("STOT RE 2", "GHS08", Warning, "H373"),
        // Table 3.10.2.
        new("Asp. Tox. 1", "GHS08", Danger, "H304"),
        // Tables 3.11.3, 4.2.3, 4.3.1 and 4.4.1.
        new("ED HH 1", "", Danger, "EUH380"),
        new("ED HH 2", "", Warning, "EUH381"),
        new("ED ENV 1", "", Danger, "EUH430"),
        new("ED ENV 2", "", Warning, "EUH431"),
        new("PBT", "", Danger, "EUH440"),
        new("vPvB", "", Danger, "EUH441"),
        new("PMT", "", Danger, "EUH450"),
        new("vPvM", "", Danger, "EUH451"),
        // Tables 4.1.4 and 5.2.
        new("Aquatic Acute 1", "GHS09", Warning, "H400"),
        new("Aquatic Chronic 1", "GHS09", Warning, "H410"),
        new("Aquatic Chronic 2", "GHS09", "", "H411"),
        new("Aquatic Chronic 3", "", "", "H412"),
        new("Aquatic Chronic 4", "", "", "H413"),
        new("Ozone 1", "GHS07", Warning, "H420"),
    }.ToDictionary(e => e.Class);

    /// <summary>The elements of a class.</summary>
    public static ClassElements Of(string code) => All[code];
}
