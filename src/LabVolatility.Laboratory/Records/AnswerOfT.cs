namespace LabVolatility.Laboratory.Records;

/// <summary>A use case's answer: a value, or what stood against it.</summary>
[System.Diagnostics.CodeAnalysis.SuppressMessage(
    "Design", "CA1000", Justification = "A use case names its own answer: Answer<Sample>.Done(sample).")]
public sealed class Answer<T>
{
    private Answer(AnswerKind kind, T? value, IReadOnlyList<Problem> problems)
    {
        Kind = kind;
        Value = value;
        Problems = problems;
    }

    public AnswerKind Kind { get; }

    public T? Value { get; }

    public IReadOnlyList<Problem> Problems { get; }

    public bool Ok => Kind is AnswerKind.Done or AnswerKind.Repeated;

    /// <summary>All problems in one sentence each, for a person.</summary>
    public string Text => string.Join(" ", Problems.Select(p => p.Message));

    public static Answer<T> Done(T value) => new(AnswerKind.Done, value, []);

    public static Answer<T> Repeated(T value) => new(AnswerKind.Repeated, value, []);

    public static Answer<T> Invalid(params IReadOnlyList<Problem> problems) => new(AnswerKind.Invalid, default, problems);

    public static Answer<T> Forbidden(string message) => new(AnswerKind.Forbidden, default, [new Problem("", message)]);

    public static Answer<T> NotFound(string message) => new(AnswerKind.NotFound, default, [new Problem("", message)]);

    public static Answer<T> Refused(params IReadOnlyList<Problem> problems) => new(AnswerKind.Refused, default, problems);

    /// <summary>A conflict, with what is in force where that can be told.</summary>
    public static Answer<T> Conflict(string message, T? inForce = default) => new(AnswerKind.Conflict, inForce, [new Problem("", message)]);
}
