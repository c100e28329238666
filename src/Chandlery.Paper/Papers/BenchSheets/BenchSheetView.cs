using Chandlery.Paper.Templates;

namespace Chandlery.Paper.Papers.BenchSheets;

/// <summary>The bench sheet. Texts that do not apply are empty; masses and shares come with their units unless said otherwise.</summary>
/// <param name="Name">Trade name.</param>
/// <param name="Count">How many candles.</param>
/// <param name="Net">Net mass of one.</param>
/// <param name="Total">Mass of everything.</param>
/// <param name="Waste">Allowance for what stays in the jug, percent without its sign.</param>
/// <param name="Stops">What stops the sale.</param>
/// <param name="First">What goes into the scented melt.</param>
/// <param name="Second">What goes into the second pour.</param>
/// <param name="Sizes">What goes into each vessel, the candle itself first.</param>
/// <param name="HasSecond">Anything when there is a second pour; empty when there is none.</param>
/// <param name="LoadWax">Load, of the wax; empty for a candle without oil.</param>
/// <param name="LoadMelt">Load, of the melt.</param>
/// <param name="LoadCandle">Load, of the finished candle.</param>
/// <param name="Temperatures">Temperatures.</param>
/// <param name="Times">Times.</param>
/// <param name="Into">What the bench calls what it is poured into: a vessel or a mould.</param>
/// <param name="Vessel">The vessel.</param>
/// <param name="Fill">How full it gets.</param>
/// <param name="Shrink">How much the wax shrinks, percent without its sign.</param>
/// <param name="NetForRoom">What the room would hold.</param>
/// <param name="WickCount">How many wicks.</param>
/// <param name="WickKind">Their kind.</param>
/// <param name="WickNote">How they stand.</param>
internal sealed record BenchSheetView(
    string Name,
    string Count,
    string Net,
    string Total,
    string Waste,
    IReadOnlyList<string> Stops,
    IReadOnlyList<PortionView> First,
    IReadOnlyList<PortionView> Second,
    IReadOnlyList<SizeView> Sizes,
    string HasSecond,
    string LoadWax,
    string LoadMelt,
    string LoadCandle,
    IReadOnlyList<TemperatureView> Temperatures,
    IReadOnlyList<TimeView> Times,
    string Into,
    string Vessel,
    string Fill,
    string Shrink,
    string NetForRoom,
    string WickCount,
    string WickKind,
    string WickNote
) : ITemplateView
{
    /// <inheritdoc/>
    public string Template => "bench-sheet.sbn";

    /// <inheritdoc/>
    public IEnumerable<(string Name, object? Value)> Values =>
        [
            ("name", Name),
            ("count", Count),
            ("net", Net),
            ("total", Total),
            ("waste", Waste),
            ("stops", Stops),
            ("first", First),
            ("second", Second),
            ("sizes", Sizes),
            ("has_second", HasSecond),
            ("load_wax", LoadWax),
            ("load_melt", LoadMelt),
            ("load_candle", LoadCandle),
            ("temperatures", Temperatures),
            ("times", Times),
            ("into", Into),
            ("vessel", Vessel),
            ("fill", Fill),
            ("shrink", Shrink),
            ("net_for_room", NetForRoom),
            ("wick_count", WickCount),
            ("wick_kind", WickKind),
            ("wick_note", WickNote),
        ];
}
