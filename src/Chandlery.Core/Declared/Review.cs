namespace Chandlery.Core.Declared;

/// <summary>Who compared a drafted declaration with the supplier's document, and when.</summary>
/// <param name="By">The reviewer's name.</param>
/// <param name="On">The day.</param>
public sealed record Review(string By, DateOnly On);
