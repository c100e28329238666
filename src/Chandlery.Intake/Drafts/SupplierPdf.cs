using Chandlery.Intake.Pages;

namespace Chandlery.Intake.Drafts;

/// <summary>A supplier's PDF, taken apart.</summary>
/// <param name="File">File name as the user knows it.</param>
/// <param name="Content">Its bytes, for the hash.</param>
/// <param name="Pages">Its pages.</param>
public sealed record SupplierPdf(string File, byte[] Content, IReadOnlyList<SheetPage> Pages);
