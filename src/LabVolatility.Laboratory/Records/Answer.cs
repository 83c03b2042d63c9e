namespace LabVolatility.Laboratory.Records;

/// <summary>How a use case ended.</summary>
public enum AnswerKind
{
    /// <summary>It was done.</summary>
    Done,

    /// <summary>The same command had been done before: this is its first answer, nothing new was stored.</summary>
    Repeated,

    /// <summary>What was sent is wrong, field by field.</summary>
    Invalid,

    /// <summary>The person lacks the right.</summary>
    Forbidden,

    /// <summary>There is no such thing.</summary>
    NotFound,

    /// <summary>A rule of the laboratory refuses it.</summary>
    Refused,

    /// <summary>Somebody else was first, or the thing changed meanwhile.</summary>
    Conflict,
}
