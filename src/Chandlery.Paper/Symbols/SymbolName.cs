using System.Diagnostics.CodeAnalysis;
using System.Text.RegularExpressions;
using Chandlery.Core.Hazards;

namespace Chandlery.Paper.Symbols;

/// <summary>The name of a drawing: a pictogram's code, or a word in lower camel case such as <c>noLiquid</c>.</summary>
public sealed partial record SymbolName
{
    private SymbolName(string text) => Text = text;

    /// <summary>
    /// Those that the papers ask for by name: without one of them a paper could not be made. The pictograms are those that a candle can
    /// come to; the three of physical hazards other than fire are not among them.
    /// </summary>
    public static IReadOnlyList<SymbolName> Needed { get; } =
    [
        .. Pictogram.All.Select(p => p.Code).Where(c => c is not ("GHS01" or "GHS03" or "GHS04")).Select(c => new SymbolName(c)),
        new("warning"),
        new("attended"),
        new("childrenAndPets"),
        new("distance"),
        new("flammable"),
        new("trimWick"),
        new("draught"),
        new("outdoorOnly"),
        new("surface"),
        new("poolClear"),
        new("snuff"),
        new("noLiquid"),
        new("noMoving"),
        new("stop"),
        new("hotVessel"),
        new("firstBurn"),
        new("longestBurn"),
        new("relight"),
        new("allWicks"),
        new("tallFlame"),
        new("fire"),
        new("pillarPlate"),
        new("holder"),
        new("torchStand"),
        new("meltWarmer"),
        new("meltAttended"),
        new("outOfReach"),
        new("noMatch"),
        new("noFire"),
        new("meltFill"),
        new("meltFlammable"),
        new("meltHot"),
        new("noFood"),
        new("meltCool"),
        new("noDrain"),
        new("coolBurn"),
        new("washHands"),
        new("airRoom"),
        new("wipeUp"),
        new("callForHelp"),
        new("rinseEyes"),
        new("reedStand"),
        new("reedTurn"),
        new("refillSame"),
        new("refillPour"),
        new("sprayFace"),
        new("sprayFabric"),
        new("sprayAir"),
        new("eMark"),
    ];

    /// <summary>The name.</summary>
    public string Text { get; }

    /// <summary>Reads a name; null when the text has not the form of one.</summary>
    public static SymbolName? TryParse(string text) =>
        Pictogram.Find(text) is not null || Word().IsMatch(text) ? new SymbolName(text) : null;

    /// <summary>The name, for print.</summary>
    [return: NotNullIfNotNull(nameof(name))]
    public static implicit operator string?(SymbolName? name) => name?.Text;

    /// <inheritdoc/>
    public override string ToString() => Text;

    [GeneratedRegex("^[a-z][A-Za-z]*$")]
    private static partial Regex Word();
}
