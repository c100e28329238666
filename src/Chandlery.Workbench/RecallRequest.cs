namespace Chandlery.Workbench;

/// <summary>What is to be found out there, and, for the papers of a recall, what the danger is.</summary>
/// <param name="By">batch, lot, oil or substance.</param>
/// <param name="Text">Its code or name.</param>
/// <param name="Hazards">The danger, each time with its language before a colon; null to look only.</param>
/// <param name="Language">Code of the page's language, in which it is said what to mind.</param>
internal sealed record RecallRequest(string By, string Text, IReadOnlyList<string>? Hazards = null, string Language = "en");
