using System.Net;
using System.Net.Sockets;
using System.Text;

namespace Chandlery.Tests.Support;

/// <summary>A network between a program and a server that fails when it is told to.</summary>
internal sealed class Detour : IDisposable
{
    private readonly TcpListener listener = new(IPAddress.Loopback, 0);
    private readonly List<TcpClient> clients = [];
    private readonly int server;
    private volatile string? cutAfter;
    private volatile bool isDeaf;

    public Detour(int server)
    {
        this.server = server;
        listener.Start();
        Port = ((IPEndPoint)listener.LocalEndpoint).Port;
        _ = Accept();
    }

    /// <summary>Where programs find the server by it.</summary>
    public int Port { get; }

    /// <summary>Cuts every connection when the program has sent a word: the server hears it, and its answer is lost.</summary>
    public void CutAfter(string word) => cutAfter = word;

    /// <summary>Cuts every connection before the server hears a word.</summary>
    public void CutBefore(string word) => cutAfter = "!" + word;

    /// <summary>Works again.</summary>
    public void Mend() => (cutAfter, isDeaf) = (null, false);

    public void Dispose()
    {
        listener.Stop();
        Cut();
    }

    private void Cut()
    {
        lock (clients)
        {
            foreach (TcpClient client in clients)
            {
                client.Client.Close(0);
            }

            clients.Clear();
        }
    }

    private async Task Accept()
    {
        try
        {
            while (true)
            {
                TcpClient program = await listener.AcceptTcpClientAsync();
                var there = new TcpClient();
                await there.ConnectAsync(IPAddress.Loopback, server);
                lock (clients)
                {
                    clients.Add(program);
                    clients.Add(there);
                }

                _ = Pass(program.GetStream(), there.GetStream(), watched: true);
                _ = Pass(there.GetStream(), program.GetStream(), watched: false);
            }
        }
        catch (Exception error) when (error is SocketException or ObjectDisposedException) { }
    }

    private async Task Pass(NetworkStream from, NetworkStream to, bool watched)
    {
        byte[] bytes = new byte[1 << 16];
        try
        {
            while (await from.ReadAsync(bytes) is > 0 and var count)
            {
                string? word = watched ? cutAfter : null;
                bool isSaid =
                    word is not null && Encoding.ASCII.GetString(bytes, 0, count).Contains(word.TrimStart('!'), StringComparison.Ordinal);
                isDeaf |= isSaid;
                if (watched ? !isSaid || word![0] != '!' : !isDeaf)
                {
                    await to.WriteAsync(bytes.AsMemory(0, count));
                }

                if (isSaid)
                {
                    await Task.Delay(200);
                    Cut();
                }
            }
        }
        catch (Exception error) when (error is IOException or SocketException or ObjectDisposedException) { }
    }
}
