using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;

namespace Chandlery.Paper.Papers;

/// <summary>What papers call a product.</summary>
internal static class CandleWords
{
    /// <summary>Key of the words: a candle without oil is no scented candle.</summary>
    public static string KindOf(Assessment a) =>
        a.Composition.Recipe.Oils.Count == 0 ? a.Kind.Called.Plain
        : a.Candle.Use == CandleUse.Outdoor ? a.Kind.Called.Outdoors
        : a.Kind.Called.Scented;
}
