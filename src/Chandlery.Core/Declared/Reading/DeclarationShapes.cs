using Chandlery.Yaml.Shapes;

namespace Chandlery.Core.Declared.Reading;

/// <summary>What stands in each kind of declaration.</summary>
internal static class DeclarationShapes
{
    /// <summary>The kinds by name.</summary>
    public static IReadOnlyList<Shape> All { get; } =
    [
        BaseShape.Base,
        BatchShape.Batch,
        BrandShape.Brand,
        CandleShape.Candle,
        DispatchShape.Dispatch,
        ExtraShape.Extra,
        IncidentShape.Incident,
        LotShape.Lot,
        MakerShape.Maker,
        OilShape.Oil,
        SetShape.Set,
        StockShape.Stock,
        TestShape.Test,
        TrialShape.Trial,
        VesselShape.Vessel,
        WaxShape.Wax,
        WeighingShape.Weighing,
    ];
}
