namespace Chandlery.Cli;

/// <summary>A bar for whoever waits for longer than a second at a terminal; nothing for anybody else.</summary>
/// <param name="errors">The error stream.</param>
/// <param name="isWatched">Whether somebody sees it who has not asked for quiet.</param>
/// <param name="elapsed">How long the command has been running.</param>
internal sealed class Progress(TextWriter errors, bool isWatched, Func<TimeSpan> elapsed)
{
    private const int BarWidth = 30;
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(1);
    private readonly Lock drawing = new();
    private string shown = "";
    private (long Count, int Filled) bar = (0, -1);

    /// <summary>Says how far the work is; may be called from several threads, and out of order.</summary>
    /// <param name="done">How many are done.</param>
    /// <param name="count">Of how many.</param>
    public void Tell(long done, long count)
    {
        if (!isWatched || count < 1 || elapsed() < Patience)
        {
            return;
        }

        lock (drawing)
        {
            int filled = (int)(BarWidth * Math.Min(done, count) / count);
            if (bar.Count == count && filled <= bar.Filled)
            {
                return;
            }

            bar = (count, filled);
            Show($"[{new string('#', filled)}{new string('.', BarWidth - filled)}] {done} of {count}");
        }
    }

    /// <summary>Takes the bar away, so that something else can be said.</summary>
    public void Clear()
    {
        lock (drawing)
        {
            if (shown.Length > 0)
            {
                Show("");
                errors.Write('\r');
                bar = (0, -1);
            }
        }
    }

    private void Show(string text)
    {
        errors.Write('\r' + text.PadRight(shown.Length));
        shown = text;
    }
}
