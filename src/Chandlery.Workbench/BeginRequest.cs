namespace Chandlery.Workbench;

/// <summary>Where the page shall work.</summary>
/// <param name="Example">True for the example, false for the maker's own folder.</param>
internal sealed record BeginRequest(bool Example);
