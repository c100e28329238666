using Chandlery.Paper.Templates;

namespace Chandlery.Paper.Papers.BenchSheets;

/// <summary>The bench sheet of wax melts: poured like a candle, with neither wick nor flame.</summary>
internal sealed record MeltBenchSheetView : ITemplateView
{
    /// <summary>Trade name.</summary>
    public required string Name { get; init; }

    /// <summary>How many of what are made, and how much that is.</summary>
    public required string Making { get; init; }

    /// <summary>What stops the sale.</summary>
    public required IReadOnlyList<string> Stops { get; init; }

    /// <summary>What goes into the melt.</summary>
    public required IReadOnlyList<PortionView> First { get; init; }

    /// <summary>What goes into the second pour; empty when there is none of its own.</summary>
    public required IReadOnlyList<PortionView> Second { get; init; }

    /// <summary>What goes into each shell, the product itself first.</summary>
    public required IReadOnlyList<SizeView> Sizes { get; init; }

    /// <summary>Anything when there is a second pour; empty when there is none.</summary>
    public required string HasSecond { get; init; }

    /// <summary>How much oil it holds; empty where there is none.</summary>
    public required string Load { get; init; }

    /// <summary>Temperatures.</summary>
    public required IReadOnlyList<TemperatureView> Temperatures { get; init; }

    /// <summary>Times.</summary>
    public required IReadOnlyList<TimeView> Times { get; init; }

    /// <summary>What it is poured into, and how full that gets.</summary>
    public required string Shell { get; init; }

    /// <inheritdoc/>
    public string Template => "bench-sheet-melt.sbn";

    /// <inheritdoc/>
    public IEnumerable<(string Name, object? Value)> Values =>
        [
            ("name", Name),
            ("making", Making),
            ("stops", Stops),
            ("first", First),
            ("second", Second),
            ("sizes", Sizes),
            ("has_second", HasSecond),
            ("load", Load),
            ("temperatures", Temperatures),
            ("times", Times),
            ("shell", Shell),
        ];
}
