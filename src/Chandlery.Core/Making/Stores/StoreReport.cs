namespace Chandlery.Core.Making.Stores;

/// <summary>The store, as told to programs.</summary>
/// <param name="Materials">What is there.</param>
/// <param name="EnoughFor">How many of each candle that is enough for.</param>
public sealed record StoreReport(IReadOnlyList<StoreReportLine> Materials, IReadOnlyList<CanMake> EnoughFor)
{
    /// <summary>The report of a store.</summary>
    public static StoreReport Of(Storeroom store) => new([.. store.Lines.Select(StoreReportLine.Of)], store.EnoughFor);
}
