namespace LabVolatility.Laboratory.Storage.Postgres;

/// <summary>The rules that the PostgreSQL database itself holds, whoever writes to it.</summary>
/// <remarks>
/// ENABLE ALWAYS: a session in replica mode fires them too. The owner of the tables can still drop them: the program
/// runs under a role that owns none, the start notices a lost guard, and the check of the records finds what was
/// changed meanwhile. A released migration calls what stood here then; changes come as new guards.
/// </remarks>
internal static class PostgresGuards
{
    private const string AppendOnlyFunction = "refuse_rewriting";

    /// <summary>Tables of which no row is ever changed or deleted.</summary>
    public static IReadOnlyList<string> RecordTables { get; } =
    [
        "audit_records", "commands", "tank_movements", "container_openings", "hand_blends", "blend_contents", "verifications", "determinations",
        "determination_revisions", "results", "taken_ons", "assessments", "decisions", "review_marks", "party_results",
        "party_withdrawals", "steps_taken", "handover_notes",
        "handover_takings", "certificates", "cargoes", "cargo_tanks",
    ];

    private static readonly string AppendOnlyBody = $"""

        BEGIN
            RAISE EXCEPTION '{GuardRules.AppendOnly}: rows of % are amended by new ones, never updated or deleted', TG_TABLE_NAME;
        END
        """;

    private static readonly Guard[] Rules =
    [
        Rule("decisions", "decisions_second_person_signs",
            """
            NEW.kind IN ('Release', 'Concession') AND EXISTS (
                SELECT 1 FROM determinations d JOIN samples s ON s.id = d.sample_id
                WHERE s.batch_id = NEW.batch_id AND (
                    d.measured_by = NEW.person_id
                    OR EXISTS (SELECT 1 FROM taken_ons t WHERE t.determination_id = d.id AND t.person_id = NEW.person_id)
                    OR EXISTS (SELECT 1 FROM determination_revisions r WHERE r.determination_id = d.id AND r."by" = NEW.person_id)))
            """,
            $"{GuardRules.SecondPersonSigns}: who measured or amended a result of the batch cannot sign its release"),
        Rule("decisions", "decisions_evidence_is_frozen",
            """
            NEW.kind IN ('Release', 'Concession') AND NOT EXISTS (
                SELECT 1 FROM assessments a
                WHERE a.id = NEW.assessment_id AND a.batch_id = NEW.batch_id AND a.evidence_hash = NEW.evidence_hash)
            """,
            $"{GuardRules.EvidenceIsFrozen}: a release rests on a frozen assessment of the same batch with the same evidence"),
        Rule("decisions", "decisions_no_concession_against_a_legal_limit",
            "NEW.kind = 'Concession' AND EXISTS (SELECT 1 FROM assessments a WHERE a.id = NEW.assessment_id AND a.fails_legal_limit)",
            $"{GuardRules.NoConcessionAgainstALegalLimit}: a legal limit is not shown to be met"),
        Rule("decisions", "decisions_one_in_force",
            "NEW.sequence <> 1 + COALESCE((SELECT MAX(d.sequence) FROM decisions d WHERE d.batch_id = NEW.batch_id), 0)",
            $"{GuardRules.OneDecisionInForce}: another decision on the batch was made meanwhile"),
        Rule("determinations", "determinations_ready_instrument_only",
            "EXISTS (SELECT 1 FROM instruments i WHERE i.code = NEW.instrument_code AND NOT i.in_service)",
            $"{GuardRules.ReadyInstrumentOnly}: the instrument is out of service"),
        Rule("determinations", "determinations_one_test_a_container",
            "NEW.sole_test AND EXISTS (SELECT 1 FROM determinations d WHERE d.sole_test AND d.container_id = NEW.container_id)",
            $"{GuardRules.OneTestAContainer}: the container has served its one test"),
        Rule("cargo_tanks", "cargo_tanks_second_person_signs",
            """
            EXISTS (
                SELECT 1 FROM certificates c JOIN samples s ON s.batch_id = NEW.batch_id JOIN determinations d ON d.sample_id = s.id
                WHERE c.id = NEW.certificate_id AND (
                    d.measured_by = c.issued_by
                    OR EXISTS (SELECT 1 FROM taken_ons t WHERE t.determination_id = d.id AND t.person_id = c.issued_by)
                    OR EXISTS (SELECT 1 FROM determination_revisions r WHERE r.determination_id = d.id AND r."by" = c.issued_by)))
            """,
            $"{GuardRules.SecondPersonSigns}: who measured or amended a result of a batch cannot sign its cargo certificate"),
        Rule("cargo_tanks", "cargo_tanks_rest_on_releases",
            """
            NOT EXISTS (
                SELECT 1 FROM decisions d
                WHERE d.id = NEW.decision_id AND d.batch_id = NEW.batch_id AND d.kind IN ('Release', 'Concession')
                AND NOT EXISTS (SELECT 1 FROM decisions l WHERE l.batch_id = d.batch_id AND l.sequence > d.sequence))
            """,
            $"{GuardRules.CargoRestsOnReleases}: a cargo certificate covers batches whose release is in force"),
        Rule("audit_records", "audit_records_unbroken_chain",
            """
            NEW.sequence <> 1 + COALESCE((SELECT MAX(r.sequence) FROM audit_records r), 0)
            OR NEW.previous_hash <> COALESCE((SELECT r.hash FROM audit_records r ORDER BY r.sequence DESC LIMIT 1), repeat('0', 64))
            """,
            $"{GuardRules.UnbrokenChain}: a record follows the last one and names its hash"),
    ];

    /// <summary>Each trigger with the body of the function that it must call.</summary>
    public static IReadOnlyList<Guard> Expected { get; } =
    [
        .. RecordTables.SelectMany(t => (Guard[])[new(t, $"{t}_no_rewriting", AppendOnlyBody), new(t, $"{t}_no_truncate", AppendOnlyBody)]),
        .. Rules,
    ];

    /// <summary>The statements that put the guards in place.</summary>
    public static IEnumerable<string> Statements()
    {
        yield return Function(AppendOnlyFunction, AppendOnlyBody);
        foreach (var table in RecordTables)
        {
            yield return $"CREATE TRIGGER {table}_no_rewriting BEFORE UPDATE OR DELETE ON {table} FOR EACH ROW EXECUTE FUNCTION {AppendOnlyFunction}()";
            yield return $"CREATE TRIGGER {table}_no_truncate BEFORE TRUNCATE ON {table} FOR EACH STATEMENT EXECUTE FUNCTION {AppendOnlyFunction}()";
        }

        foreach (var rule in Rules)
        {
            yield return Function(rule.Trigger, rule.Sql);
            yield return $"CREATE TRIGGER {rule.Trigger} BEFORE INSERT ON {rule.Table} FOR EACH ROW EXECUTE FUNCTION {rule.Trigger}()";
        }

        foreach (var guard in Expected)
            yield return $"ALTER TABLE {guard.Table} ENABLE ALWAYS TRIGGER {guard.Trigger}";
    }

    // pg_temp last: else a session's temporary table would stand in for the real one.
    private static string Function(string name, string body) =>
        $"CREATE FUNCTION {name}() RETURNS trigger LANGUAGE plpgsql SET search_path = public, pg_temp AS $guard${body}$guard$";

    private static Guard Rule(string table, string trigger, string condition, string message) => new(table, trigger, $"""

        BEGIN
            IF {condition} THEN
                RAISE EXCEPTION '{message}';
            END IF;
            RETURN NEW;
        END
        """);
}
