package org.nextpull.plan.text;

/** A plan that has every key, none of them at its default. */
final class FullPlan {
    private FullPlan() {}

    static final String TEXT = """
            [engine]
            name = "two-litre four"
            displacement_l = 1.998
            cylinders = 4
            compression_ratio = 11.5
            induction = "boosted"

            [fuel]
            blend = "mine"

            [[blend]]
            name = "mine"
            of = { ethanol = 0.3, e10 = 0.7 }
            by = "mass"

            [[blend]]
            name = "data sheet"
            carbon = 0.81
            hydrogen = 0.125
            oxygen = 0.065
            density_kg_l = 0.745
            energy_mj_kg = 41.2
            latent_mj_kg = 0.36
            research_octane = 102

            [[candidate]]
            label = "tank"
            note = "what is in it now"
            price_per_l = 1.75

            [[candidate]]
            label = "blended"
            fuel = "data sheet"

            [dyno]
            kind = "chassis-brake"
            torque_at = "roller"
            engine_side_inertia_kg_m2 = 0.22
            roller_inertia_kg_m2 = 18.5
            roller_radius_m = 0.15875
            engine_rev_per_roller_rev = 2.2
            inertia_in_log = false

            [air]
            standard = "iso-1585"
            baro_kpa = 98.7
            air_c = 24.5
            humidity_percent = 45

            [band]
            from_rpm = 3000
            to_rpm = 6800
            rows_every_rpm = 500

            [pull]
            kind = "steps"
            full_load_percent = 90
            settle_s = 1.5
            hold_s = 4
            hold_speeds = [3600, 4900, 5900]
            hold_most_s = 45
            throw_away_first = 1

            [timing]
            sets = "offset"
            start_deg = -4
            least_deg = -8
            most_deg = 6
            largest_step_deg = 1.5
            resolution_deg = 0.25
            map_rpm = [3000, 4500, 7000]
            present_map = [[3000, 18.0], [7000, 28.5]]

            [mixture]
            start_lambda = 0.86
            richest_lambda = 0.78
            leanest_lambda = 0.94
            largest_step_lambda = 0.03
            resolution_lambda = 0.01

            [limits]
            knock_events = 3
            knock_level = 1.5
            knock_margin_deg = 2.5
            look_again = true
            most_rpm = 7200
            lean_lambda = 0.96
            lean_for_s = 0.4
            exhaust_c = 880
            coolant_c = 105
            oil_c = 130
            inlet_c = 55
            oil_pressure_kpa = 250
            fuel_pressure_kpa = 280
            boost_kpa = 90
            injector_duty_percent = 85

            [start]
            coolant_c = [80, 95]
            oil_c = [85, 110]
            inlet_c = [10, 35]
            cool_down_s = 120

            [sheet]
            customer = "a customer"
            vehicle = "hill-climb single-seater"
            place = "cell 2"
            operator = "the tuner"
            reference = "job 17"

            [goal]
            response = "power"
            near_best_percent = 0.3
            worth_percent = 0.8
            max_pulls = 18
            learn_from_notebook = false

            [log]
            columns = { torque = "Brake load", exhaust_temperature = 'EGT "1"' }
            units = { torque = "lb-ft" }
            afr_scale = 14.7
            sample_hz = 50
            lambda_delay_s = 0.12
            corrected_by = "none"
            settings = "settings.csv"

            [[wire]]
            device = "/dev/ttyUSB0"
            baud = 57600
            bits = 7
            parity = "even"
            stop = 2
            flow = "rts-cts"
            lines = "sentence"
            columns = ["rpm", "torque [Nm]"]
            delay_s = 0.08

            [[wire]]
            device = "COM7"
            """;
}
