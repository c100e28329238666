using System.Text;

namespace Chandlery.Core.SafetyFiles.Recalls;

/// <summary>Writes a recall notice for a page on the web.</summary>
public static class NoticeWeb
{
    /// <summary>The notice as HTML; headings, paragraphs and the picture, nothing else.</summary>
    public static string Html(NoticeText notice)
    {
        var html = new StringBuilder();
        html.Append(System.Globalization.CultureInfo.InvariantCulture, $"<section lang=\"{notice.Language}\">\n");
        html.Append("  <h1>").Append(Safe(notice.Title)).Append("</h1>\n");
        bool isFirst = true;
        foreach ((string heading, IReadOnlyList<string> texts) in notice.Parts)
        {
            if (heading.Length > 0)
            {
                html.Append("  <h2>").Append(Safe(heading)).Append("</h2>\n");
            }

            foreach (string text in texts)
            {
                html.Append("  <p>").Append(Safe(text)).Append("</p>\n");
            }

            if (isFirst && notice.PictureFile.Length > 0)
            {
                html.Append(
                    System.Globalization.CultureInfo.InvariantCulture,
                    $"  <p><img src=\"{Safe(notice.PictureFile)}\" alt=\"{Safe(notice.Name)}\"></p>\n"
                );
            }

            isFirst = false;
        }

        return html.Append("</section>\n").ToString();
    }

    private static string Safe(string text) =>
        text.Replace("&", "&amp;", StringComparison.Ordinal)
            .Replace("<", "&lt;", StringComparison.Ordinal)
            .Replace(">", "&gt;", StringComparison.Ordinal)
            .Replace("\"", "&quot;", StringComparison.Ordinal);
}
