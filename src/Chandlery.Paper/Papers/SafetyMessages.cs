namespace Chandlery.Paper.Papers;

/// <summary>Safety messages that several papers show.</summary>
internal static class SafetyMessages
{
    /// <summary>Messages that EN 15494 asks of every candle (four; see the project's sources), in the order they are shown.</summary>
    public static readonly IReadOnlyList<string> Compulsory = ["attended", "childrenAndPets", "distance", "flammable"];
}
