namespace Chandlery.Paper.Drawing;

/// <summary>A file that travels inside a PDF.</summary>
/// <param name="Name">Its name; no other file in the PDF has it.</param>
/// <param name="MediaType">Its media type, such as <c>application/json</c>.</param>
/// <param name="Bytes">What it holds.</param>
/// <param name="Description">What it is, for people.</param>
public sealed record PdfAttachment(string Name, string MediaType, byte[] Bytes, string Description);
