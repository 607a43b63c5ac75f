using System.Runtime.ExceptionServices;
using TrimOut.Core;

namespace TrimOut.Screens.Shell;

/// <summary>Work that goes on beside the keys: how far it is, and what came of it.</summary>
internal sealed class SideWork : IDisposable
{
    private readonly CancellationTokenSource _stop = new();
    private readonly ManualResetEventSlim _ended = new();
    private readonly string _doing;
    private volatile string _progress;
    private Result<Ask> _came;
    private ExceptionDispatchInfo? _fault;

    private SideWork(string doing, IScreen askedOn) => (_doing, _progress, AskedOn) = (doing, doing, askedOn);

    /// <summary>The screen that it was asked for on.</summary>
    public IScreen AskedOn { get; }

    /// <summary>What it does just now, in words.</summary>
    public string Progress => _progress;

    /// <summary>Whether it is over.</summary>
    public bool Ended => _ended.IsSet;

    /// <summary>
    /// What came of it, once it is over: what is asked next, or why nothing is. A fault of the program's own is thrown here, where the keys are.
    /// </summary>
    public Result<Ask> Came
    {
        get
        {
            _fault?.Throw();
            return _came;
        }
    }

    /// <summary>Begins it.</summary>
    public static SideWork Begin(Action<Action> beside, Ask.Beside asked, IDesk desk, IScreen askedOn)
    {
        var work = new SideWork(asked.Doing, askedOn);
        beside(() => work.Run(asked, desk));
        return work;
    }

    /// <summary>Asks it to stop at the next good place.</summary>
    public void Stop()
    {
        _stop.Cancel();
        _progress = $"{_doing}: stopping";
    }

    /// <summary>Stops it and waits a moment for its end: the program is about to go.</summary>
    public void Dispose()
    {
        _stop.Cancel();
        if (_ended.Wait(TimeSpan.FromSeconds(2)))
            _ended.Dispose();
    }

    private void Run(Ask.Beside asked, IDesk desk)
    {
        try
        {
            _came = asked.Do(desk, says => _progress = $"{_doing}: {says}", _stop.Token);
        }
        catch (OperationCanceledException)
        {
            _came = new Refusal($"{_doing}: stopped.");
        }
        catch (Exception fault)
        {
            _fault = ExceptionDispatchInfo.Capture(fault);
        }
        _ended.Set();
    }
}
