using TrimOut.Core.History;
using TrimOut.HouseFile.Files;

namespace TrimOut.HouseFile;

/// <content>Whether the names of an open house still lead to what is written.</content>
public sealed partial class HouseOnDisk
{
    // What a folder was moved or removed with is written to faithfully, and nobody finds it again.
    private readonly Dictionary<string, IHeldName> _held = new(StringComparer.Ordinal);

    /// <summary>Holds on to what the names of the house file, its lock and its journal lead to now.</summary>
    private void HoldNames()
    {
        LetNamesGo();
        foreach (var name in _journal is null ? [_names.Main, _names.Lock] : new[] { _names.Main, _names.Lock, _names.Journal })
        {
            if (_lock is not null && _here.Files.Exists(name))
                _held[name] = _here.Files.Hold(name, isOpen: name != _names.Main);
        }
    }

    /// <summary>Throws where a name leads somewhere else than to what is held: what was written would not be found under it.</summary>
    /// <exception cref="HouseStoreException">One does.</exception>
    private void RequireNames()
    {
        foreach (var (name, held) in _held)
        {
            if (!held.StillLeadsThere)
                throw new HouseStoreException(StoreFault.NotThere,
                    $"Not saved: {name} was removed, moved or replaced while the house was open. Put it back as it was and save again, or save a copy " +
                        $"somewhere else.");
        }
    }

    /// <inheritdoc/>
    public string? NotHeldBecause => ReadOnlyBecause is not null ? null : NotHeldNow();

    /// <summary>After closing: why what was called saved is not to be found again; null where it is.</summary>
    public string? NotKeptBecause { get; private set; }

    /// <summary>What a look at the names and at the journal says now.</summary>
    private string? NotHeldNow()
    {
        try
        {
            RequireNames();
            return _journal is null || (!_journalIsCut && IsJournalAsLeft()) ? null
                : $"{_names.Journal} was cut or written to by something else while the house was open.";
        }
        catch (Exception failed) when (Faults.OfDisk(failed) || failed is HouseStoreException)
        {
            return failed.Message.Replace("Not saved: ", "", StringComparison.Ordinal);
        }
    }

    private void LetNamesGo()
    {
        foreach (var held in _held.Values)
            held.Dispose();
        _held.Clear();
    }
}
