using System.Net;
using Microsoft.AspNetCore.Builder;

namespace Chandlery.Workbench;

/// <summary>
/// A second door to the page, for a phone at the bench. It is shut until the maker opens it, stands in the private network alone, and
/// shuts with the program.
/// </summary>
/// <param name="nearby">Where other devices of the network reach this machine; null where none does.</param>
/// <param name="listen">Starts the page at an address.</param>
internal sealed class PhoneDoor(Func<IPAddress?> nearby, Func<IPAddress, Task<WebApplication>> listen) : IAsyncDisposable
{
    private readonly SemaphoreSlim turn = new(1);
    private WebApplication? opened;

    /// <summary>Opens the door, or finds it open; its address, or null where the machine is in no private network.</summary>
    public async Task<string?> Open()
    {
        await turn.WaitAsync();
        try
        {
            if (opened is null && nearby() is { } address)
            {
                opened = await listen(address);
            }

            return opened?.Urls.First();
        }
        finally
        {
            turn.Release();
        }
    }

    /// <summary>Shuts it: whoever came in through it stands outside again.</summary>
    public async Task Shut()
    {
        await turn.WaitAsync();
        try
        {
            if (opened is not null)
            {
                await opened.DisposeAsync();
                opened = null;
            }
        }
        finally
        {
            turn.Release();
        }
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        await Shut();
        turn.Dispose();
    }
}
