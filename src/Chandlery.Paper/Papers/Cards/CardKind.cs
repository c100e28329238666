namespace Chandlery.Paper.Papers.Cards;

/// <summary>Cards that go with a candle.</summary>
public enum CardKind
{
    /// <summary>For the buyer, A6.</summary>
    Buyer,

    /// <summary>For the buyer's pocket or the parcel, A7: the messages that matter most.</summary>
    Pocket,

    /// <summary>For the shop's shelf, A5.</summary>
    Shop,
}
