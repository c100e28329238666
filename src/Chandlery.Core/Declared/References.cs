namespace Chandlery.Core.Declared;

/// <summary>Which other declarations of the folder a declaration names.</summary>
public static class References
{
    /// <summary>What it names, in no order; the kind of product is not among it, which is no file of the maker's.</summary>
    public static IEnumerable<(Type Kind, Reference To)> Of(IDeclaration declared) =>
        declared switch
        {
            Candle c =>
            [
                .. One<Vessel>(c.Vessel),
                .. One<Wax>(c.Wax),
                .. c.Oils.SelectMany(o => One<Oil>(o.Oil)),
                .. c.Extras.SelectMany(e => One<Extra>(e.Extra)),
            ],
            Batch b =>
            [
                .. One<Candle>(b.Candle),
                .. b.Oils.SelectMany(o => One<Oil>(o.Oil)),
                .. b.Extras.SelectMany(e => One<Extra>(e.Extra)),
                .. b.Lots.SelectMany(One<Lot>),
            ],
            Wax w => w.Blend.SelectMany(p => One<Wax>(p.Wax)),
            Trial t => [.. t.Oils.SelectMany(o => One<Oil>(o.Oil)), .. One<Wax>(t.Wax)],
            GiftSet s => s.Parts.SelectMany(p => One<Candle>(p.Product)),
            Lot l => l.Content switch
            {
                LotContent.Oil => One<Oil>(l.Of),
                LotContent.Wax => One<Wax>(l.Of),
                LotContent.Extra => One<Extra>(l.Of),
                LotContent.Vessel => One<Vessel>(l.Of),
                _ => [],
            },
            Dispatch d => One<Batch>(d.Batch),
            Weighing w => One<Batch>(w.Batch),
            Incident i => [.. One<Candle>(i.Candle), .. One<Batch>(i.Batch)],
            Test t => [.. One<Candle>(t.Candle), .. One<Vessel>(t.Vessel), .. One<Wax>(t.Wax)],
            _ => [],
        };

    private static IEnumerable<(Type Kind, Reference To)> One<T>(Reference? to)
        where T : IDeclaration => to is null ? [] : [(typeof(T), to)];
}
