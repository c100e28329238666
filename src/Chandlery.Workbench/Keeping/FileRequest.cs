namespace Chandlery.Workbench.Keeping;

/// <summary>What shall become of a declaration's file.</summary>
/// <param name="Do">copy, call (give the file another name), away (put away), back (bring back), or text (put back as it was).</param>
/// <param name="Declares">Its kind.</param>
/// <param name="Id">Its name.</param>
/// <param name="Name">What a copy or the file is called; null for the others.</param>
/// <param name="Hash">The text of the history, for bringing or putting back; null for the others.</param>
internal sealed record FileRequest(string Do, string Declares, string Id, string? Name = null, string? Hash = null);
