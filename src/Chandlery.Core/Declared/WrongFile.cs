namespace Chandlery.Core.Declared;

/// <summary>A file that cannot be used because of problems of its own, which are said where it is read.</summary>
/// <param name="Id">File name without its ending, by which others refer to it.</param>
/// <param name="Kind">What it declares, such as <c>oil</c>; null when not even that can be read.</param>
/// <param name="File">The file as the user knows it.</param>
public sealed record WrongFile(string Id, string? Kind, string File);
