using Chandlery.Paper.Templates;

namespace Chandlery.Paper.Papers.BenchSheets;

/// <summary>The bench sheet. Texts that do not apply are empty; masses and shares come with their units unless said otherwise.</summary>
internal sealed record BenchSheetView : ITemplateView
{
    /// <summary>Trade name.</summary>
    public required string Name { get; init; }

    /// <summary>How many candles.</summary>
    public required string Count { get; init; }

    /// <summary>Net mass of one.</summary>
    public required string Net { get; init; }

    /// <summary>Mass of everything.</summary>
    public required string Total { get; init; }

    /// <summary>Allowance for what stays in the jug, percent without its sign.</summary>
    public required string Waste { get; init; }

    /// <summary>What stops the sale.</summary>
    public required IReadOnlyList<string> Stops { get; init; }

    /// <summary>What goes into the scented melt.</summary>
    public required IReadOnlyList<PortionView> First { get; init; }

    /// <summary>What goes into the second pour.</summary>
    public required IReadOnlyList<PortionView> Second { get; init; }

    /// <summary>What goes into each vessel, the candle itself first.</summary>
    public required IReadOnlyList<SizeView> Sizes { get; init; }

    /// <summary>Anything when there is a second pour; empty when there is none.</summary>
    public required string HasSecond { get; init; }

    /// <summary>Load, of the wax; empty for a candle without oil.</summary>
    public required string LoadWax { get; init; }

    /// <summary>Load, of the melt.</summary>
    public required string LoadMelt { get; init; }

    /// <summary>Load, of the finished candle.</summary>
    public required string LoadCandle { get; init; }

    /// <summary>Temperatures.</summary>
    public required IReadOnlyList<TemperatureView> Temperatures { get; init; }

    /// <summary>Times.</summary>
    public required IReadOnlyList<TimeView> Times { get; init; }

    /// <summary>What the bench calls what it is poured into: a vessel or a mould.</summary>
    public required string Into { get; init; }

    /// <summary>The vessel.</summary>
    public required string Vessel { get; init; }

    /// <summary>How full it gets.</summary>
    public required string Fill { get; init; }

    /// <summary>How much the wax shrinks, percent without its sign.</summary>
    public required string Shrink { get; init; }

    /// <summary>What the room would hold.</summary>
    public required string NetForRoom { get; init; }

    /// <summary>How many wicks.</summary>
    public required string WickCount { get; init; }

    /// <summary>Their kind.</summary>
    public required string WickKind { get; init; }

    /// <summary>How they stand.</summary>
    public required string WickNote { get; init; }

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
