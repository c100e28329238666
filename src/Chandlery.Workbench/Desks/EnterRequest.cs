namespace Chandlery.Workbench.Desks;

/// <summary>That a label shall be entered in the register.</summary>
/// <param name="Id">Name of the candle or batch.</param>
/// <param name="Edition">Edition of the law; null for the first.</param>
/// <param name="By">Who issues.</param>
/// <param name="IsSure">Whether whoever issues has read what speaks against it.</param>
public sealed record EnterRequest(string Id, string? Edition, string? By, bool IsSure = false);
