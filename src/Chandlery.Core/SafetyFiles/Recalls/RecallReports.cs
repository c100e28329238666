using Chandlery.Core.Declared;
using Chandlery.Yaml;

namespace Chandlery.Core.SafetyFiles.Recalls;

/// <summary>Puts a recall into the form for programs.</summary>
public static class RecallReports
{
    /// <summary>The report of a recall.</summary>
    public static RecallReport Of(RecallResult recall) =>
        new(
            recall.Query.By.ToString().ToLowerInvariant(),
            recall.Query.Text,
            [
                .. recall.Batches.Select(b => new RecalledBatchReport
                {
                    Batch = b.Batch.Code,
                    Candle = b.Candle.Name,
                    Why = b.Why,
                    IsCertain = b.IsCertain,
                    Made = b.Batch.Made,
                    Dispatched = b.Dispatched,
                    Left = b.Left,
                    Receivers = [.. b.Dispatches.Select(Receiver)],
                }),
            ],
            recall.Unknown
        );

    /// <summary>How to reach somebody, on one line; null when nothing is known.</summary>
    public static string? ContactOf(Receiver receiver)
    {
        string text = string.Join(", ", receiver.AddressLines.Concat(new[] { receiver.Email, receiver.Telephone }.OfType<string>()));
        return text.Length > 0 ? text : null;
    }

    private static ReceiverReport Receiver(Dispatch dispatch) =>
        new(
            IsoDay.Plain(dispatch.On),
            dispatch.Pieces,
            dispatch.Country,
            dispatch.ToWhom.ToString().ToLowerInvariant(),
            dispatch.Receiver?.Name,
            dispatch.Receiver is { } receiver ? ContactOf(receiver) : null
        );
}
