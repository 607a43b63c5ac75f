using System.Net;
using System.Net.Sockets;

namespace TrimOut.Office.Tests.Storms;

/// <summary>Stands between a device and the office, passes pieces on, and cuts the line where it is told to.</summary>
internal sealed class CutProxy : IDisposable
{
    private readonly TcpListener _listener = new(IPAddress.Loopback, 0);
    private readonly int _to;
    private readonly List<byte> _heard = [];
    private int _pieces;

    public CutProxy(int to)
    {
        _to = to;
        _listener.Start();
        Port = ((IPEndPoint)_listener.LocalEndpoint).Port;
        _ = Serve();
    }

    public int Port { get; }

    /// <summary>The piece, in whichever direction, at which the line is cut before it is passed on; none where negative.</summary>
    public int CutBefore { get; set; } = -1;

    /// <summary>Whether a piece to the server that is cut at is passed on first, so that only its answer is lost.</summary>
    public bool LosesOnlyTheAnswer { get; set; }

    /// <summary>Whether pieces are held back for ever from the cut on, as where a network goes away without a word.</summary>
    public bool Hangs { get; set; }

    /// <summary>How many pieces have come.</summary>
    public int Pieces => _pieces;

    /// <summary>All bytes that went by.</summary>
    public byte[] Heard
    {
        get
        {
            lock (_heard)
                return [.. _heard];
        }
    }

    public void Dispose() => _listener.Stop();

    private async Task Serve()
    {
        try
        {
            while (true)
            {
                var caller = await _listener.AcceptTcpClientAsync();
                _ = Pass(caller);
            }
        }
        catch (Exception ended) when (ended is SocketException or ObjectDisposedException)
        {
            // It was stopped.
        }
    }

    private async Task Pass(TcpClient caller)
    {
        using var here = caller;
        using var there = new TcpClient();
        try
        {
            await there.ConnectAsync(IPAddress.Loopback, _to);
            await Task.WhenAny(Copy(here, there, true), Copy(there, here, false));
        }
        catch (SocketException)
        {
            // The server is away: so is the line.
        }
    }

    private async Task Copy(TcpClient from, TcpClient to, bool up)
    {
        var buffer = new byte[64 * 1024];
        try
        {
            while (await from.GetStream().ReadAsync(buffer) is > 0 and var read)
            {
                var piece = Interlocked.Increment(ref _pieces) - 1;
                lock (_heard)
                    _heard.AddRange(buffer.AsSpan(0, read));
                if (CutBefore >= 0 && piece >= CutBefore)
                {
                    if (Hangs)
                        await Task.Delay(Timeout.Infinite);
                    if (up && LosesOnlyTheAnswer)
                    {
                        await to.GetStream().WriteAsync(buffer.AsMemory(0, read));
                        await Task.Delay(30);
                    }
                    return;
                }
                await to.GetStream().WriteAsync(buffer.AsMemory(0, read));
            }
        }
        catch (Exception ended) when (ended is IOException or ObjectDisposedException or InvalidOperationException)
        {
            // One side is gone.
        }
    }
}
