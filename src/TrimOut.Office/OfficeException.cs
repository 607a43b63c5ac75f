namespace TrimOut.Office;

/// <summary>What sort of thing is wrong between here and the office.</summary>
public enum OfficeFault
{
    /// <summary>The office can't be reached now, or the connection was cut. What was not called done may be done; doing it again is safe.</summary>
    Away,

    /// <summary>The office does not let this device do that.</summary>
    NotAllowed,

    /// <summary>What was sent, or came, is no change or another one of the same name; nothing of it was taken.</summary>
    BadData,

    /// <summary>The office's tables are missing, or older or newer than this program.</summary>
    NotSetUp,

    /// <summary>What this device is known by at the office is missing or can't be used.</summary>
    NoCredentials,

    /// <summary>The office's certificate is not the one that it should have, or the connection is not encrypted.</summary>
    NotTrusted,
}

/// <summary>Something is wrong between here and the office; the message is for the user and says what to do.</summary>
public sealed class OfficeException : Exception
{
    /// <summary>With no message.</summary>
    public OfficeException() { }

    /// <summary>With a message for the user.</summary>
    public OfficeException(string message) : base(message) { }

    /// <summary>With a message for the user, and what lies behind it.</summary>
    public OfficeException(string message, Exception inner) : base(message, inner) { }

    /// <summary>With what sort of thing is wrong.</summary>
    public OfficeException(OfficeFault fault, string message, Exception? inner = null) : base(message, inner) => Fault = fault;

    /// <summary>What sort of thing is wrong.</summary>
    public OfficeFault Fault { get; }

    /// <summary>Whether the device is in the house, or not, and may not do what it asked for there.</summary>
    internal bool IsOnlyReading { get; init; }

    /// <summary>Whether what was fetched before is not what the office holds now, as after it was put back from a backup.</summary>
    internal bool IsAnotherPast { get; init; }
}
