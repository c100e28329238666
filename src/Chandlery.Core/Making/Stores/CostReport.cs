namespace Chandlery.Core.Making.Stores;

/// <summary>What a candle costs, as told to programs. What is not known is null.</summary>
public sealed record CostReport
{
    /// <summary>The candle's file name without ending.</summary>
    public required string Candle { get; init; }

    /// <summary>What all amounts are in; null when the maker does not say.</summary>
    public required string? Currency { get; init; }

    /// <summary>The parts.</summary>
    public required IReadOnlyList<CostReportPart> Parts { get; init; }

    /// <summary>The cost; null when a part of it is not known.</summary>
    public required decimal? Cost { get; init; }

    /// <summary>The sum of what is known.</summary>
    public required decimal AtLeast { get; init; }

    /// <summary>Price before tax.</summary>
    public required decimal? Price { get; init; }

    /// <summary>Price with tax.</summary>
    public required decimal? PriceWithTax { get; init; }

    /// <summary>The report of a cost.</summary>
    public static CostReport Of(CandleCost cost) =>
        new()
        {
            Candle = cost.Candle.Id,
            Currency = cost.Rates?.Currency,
            Parts = [.. cost.Parts.Select(p => new CostReportPart(p.What, p.Amount, Rounded(p.Cost?.Amount, 4), p.By))],
            Cost = cost.IsWhole ? Rounded(cost.Known.Amount, 2) : null,
            AtLeast = Math.Round(cost.Known.Amount, 2),
            Price = Rounded(cost.Price?.Amount, 2),
            PriceWithTax = Rounded(cost.PriceWithTax?.Amount, 2),
        };

    private static decimal? Rounded(decimal? amount, int decimals) => amount is { } a ? Math.Round(a, decimals) : null;
}
