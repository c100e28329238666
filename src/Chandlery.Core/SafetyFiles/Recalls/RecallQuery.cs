namespace Chandlery.Core.SafetyFiles.Recalls;

/// <summary>What a recall begins with.</summary>
/// <param name="By">What is named.</param>
/// <param name="Text">Its code, file name or, for substances, CAS number or part of a name.</param>
public sealed record RecallQuery(RecallBy By, string Text);
