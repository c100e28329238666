using Chandlery.Core.Declared;

namespace Chandlery.Core.Making.Stores;

/// <summary>Something that is kept in store.</summary>
/// <param name="Content">What kind of thing it is.</param>
/// <param name="Id">Its file name without ending; for wicks and packaging what the candles call them.</param>
public sealed record Material(LotContent Content, string Id)
{
    /// <summary>True when it is counted in pieces, false when it is weighed in grams.</summary>
    public bool IsCounted => Content is LotContent.Vessel or LotContent.Wick or LotContent.Packaging;

    /// <summary>The unit that it is kept in.</summary>
    public string Unit => IsCounted ? "pieces" : "g";
}
