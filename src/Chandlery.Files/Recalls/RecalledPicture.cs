using Chandlery.Paper.Scenes;

namespace Chandlery.Files.Recalls;

/// <summary>What notices show of a recalled product.</summary>
/// <param name="Scene">As it is printed.</param>
/// <param name="FileName">The file beside the text for the web.</param>
/// <param name="File">What is in it.</param>
/// <param name="IsLabel">Whether it is the label and not the product, which notices then say.</param>
internal sealed record RecalledPicture(Scene Scene, string FileName, byte[] File, bool IsLabel);
