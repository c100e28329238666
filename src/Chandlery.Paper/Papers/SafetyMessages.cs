namespace Chandlery.Paper.Papers;

/// <summary>Which burn-safety messages there are for whom, and the signs that stand beside them.</summary>
internal static class SafetyMessages
{
    /// <summary>Messages that EN 15494 asks of every candle (four; see the project's sources), in the order they are shown.</summary>
    public static readonly IReadOnlyList<string> Compulsory = ["attended", "childrenAndPets", "distance", "flammable"];

    /// <summary>The three that save lives, which cards set largest.</summary>
    public static readonly IReadOnlyList<string> First = ["attended", "childrenAndPets", "flammable"];

    /// <summary>The sign of a message, or of a word of a law's own warning.</summary>
    public static string SignOf(string key) =>
        key switch
        {
            "trimWicks" => "trimWick",
            "astmSight" => "attended",
            "astmFire" => "flammable",
            "astmChildren" => "childrenAndPets",
            _ => key,
        };
}
