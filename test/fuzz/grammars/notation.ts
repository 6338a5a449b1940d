// Calc blocks as a grammar: mostly well-formed, with names, tables and units that fit together often enough to be calculated.
import type { Grammar } from '../grammar.ts';

// biome-ignore format: alternatives side by side
export const NOTATION: Grammar = {
  block: ['{line}', '{line}{end}{block}', '{line}{end}{block}', '{line}{end}{line}{end}{block}'],
  end: ['\n', '\n', '\n', '\r\n', '\n\n', '  # a note\n', '\n  '],
  line: [
    '{name} = {literal}', '{name} = {value}', '{name}: {unit} = {value}', '{name} = {value}{clause}', '{name} = {input}{clause}',
    'motors.{name} = {value}', 'motors.{name}: {unit} = {value}{clause}', '{name}({params}) = {value}', '{name}({params}): {unit} = {value}{needs}',
    'shall {condition}{clause}', 'should {condition}{clause}', 'shall {condition} for each motors{clause}',
    'shall {condition} throughout {name} from {value} to {value}', 'shall {condition} accepted by "lead" until {date} because {text}',
    'curve {sum}: {unit} over {name} from {value} to {value}\n  mark {value} {text}\n  limit {value}', 'curve {sum}, {sum} over x from {literal} to {literal} log',
    'tabulate {sum}: {unit} over {name} from {literal} to {literal} step {literal}', 'instrument {name} ± (1.5 % + 0.5 mV) serial {text} due {date}',
    '{name} = {literal} by {name} on {date}', 'action {text} by {text} due {date}', 'use {text} for {name}, {name}', 'use {text}', '{name} = readings [{literal}, {literal}]',
    '{soup}', '{value}', 'x == {value}', '  {name} = {value}',
  ],
  params: ['', 'a', 'a: kW, b: V', 'a: any', 'a: [ohm], b', 'a: text, b: date', '{name}: {unit}'],
  needs: ['', '\n  needs a > 0 because "positive"', ' needs {condition}, {condition} because {text}'],
  clause: [
    '', ' from {kind} {text}', ' because {text}', ' {text}', '\n  with a = {value}', '\n  with {name} = {value}, {name}: {unit} = {value}', '{clause}{clause}',
  ],
  kind: ['plate', 'measurement', 'datasheet', 'standard', 'assumption', 'practice', 'plaet'],
  text: ['"M-12"', '""', '"a \\"b\\" \\\\ # c"', '"<b>|`*_[x](#y)"', '"±5 °C"', '"100 %', '"a.ampwright.md"', '"motors"'],
  date: ['2026-11-20', '2024-02-29', '2026-2-3', '2026-02-30'],
  name: ['a', 'b', 'x', 'I_n', 'U_0', 'P_n', 'η', 'K', 'motors', 'contactors', 'f', 'x_{digit}', 'limit', 'constructor', '__proto__', 'R', 'row', 'V'],
  digit: ['0', '1', '2', '7'],
  number: ['1', '0', '2.5', '400', '1.2e-3', '92.4', '1e300', '1e-300', 'pi', '007', '1,5', '1e400'],
  unit: [
    'V', 'A', '1', '%', 'kW', 'ohm', 'mV', 'kVA', 'var', 'Hz', 'rpm', 's', 'd', 'degC', 'K', 'N·m', 'W/(m²·K)', 'A·s^(1/2)/mm²', '1/K', 'ohm/km', 'mm^2', 'hp', 'rad',
    'text', 'date', '[V]', 'kw', 'm/s/s',
  ],
  literal: ['1', '{number} {unit}', '{number} {unit}', '{number}', '{date}', '{text}', 'yes', 'no', '-{number} {unit}'],
  input: [
    '1 V', '{number} {unit} ± 2 %', '{number} {unit} ± {number} {unit}', '{number} {unit} ± (1.5 % + 0.5 mV) (k=2)', '{number} {unit} within 91 % to 93 %',
    'readings [1 V, 2 V, {number} {unit}] ± 0.1 V', '[1 V ± 1 %, -2 V ± 1 V]',
  ],
  value: ['1', '{sum}', '{sum}', '{whole}', '{condition}'],
  sum: ['a', '{product}', '{product} + {product}', '{product} - {product} + {product}', '{product}'],
  product: ['a', '{power}', '{power}', '{power} * {power}', '{power}/{power}', '{power}·{name}', '{power} × {power} ÷ {power}'],
  power: ['a', '{atom}', '{atom}', '{atom}', '-{atom}', '{atom}^2', '{atom}²', '{atom}^(1/2)', '-{atom}^-{atom}', '√{atom}', '{atom}^{atom}'],
  atom: [
    'a', '{literal}', '{literal}', '{name}', '{name}', '({value})', '[{value}, {value}]', '[{value}, {value}, {value},]', '{name}.{column}', 'motors.{column}', 'K.{column}',
    '{function}({value})', '{function}({value}, {value})', '{name}({value}, a = {value})', 'interpolate([1, 2, 3], [{value}, {value}, 2], {value})', 'fla_3ph({value}, 400 V, 92 %, 0.84)',
    'row.{column}', 'integrate({value}, {value})', 'fit([1, 2, 3], {value}, {value})', 'uncertainty_of({value})', 'count(motors)', 'round({value}, {literal})',
  ],
  function: [
    'abs', 'sqrt', 'exp', 'ln', 'log10', 'sin', 'cos', 'tan', 'asin', 'acos', 'atan', 'atan2', 'hypot', 'min', 'max', 'sum', 'mean', 'count', 'ceil', 'floor', 'differences', 'slope',
    'interpolate', 'coil_current', 'voltage_unbalance', 'f', 'nosuch',
  ],
  column: ['P_n', 'I_AC3', 'type', 'from', 'U_s', 'seen', 'nosuch', 'row', 'constructor'],
  condition: [
    'yes', '{sum} {relation} {sum}', '{sum} {relation} {sum}', '{sum} <= {sum} <= {sum}', 'not {condition}', '{condition} and {condition}', '{condition} or {condition}',
    '{sum} is {text}', '{sum} is not {text}', '{sum}', '({condition})',
  ],
  relation: ['<', '<=', '≥', '>', '==', '!=', '=', 'is'],
  whole: [
    'a', 'if {condition} then {value} else {value}', 'least {column} of contactors where {condition}', 'greatest {column} of motors where {condition}', 'first of motors',
    'first of {name} where {condition}', 'the {column} of contactors where {condition}', 'root of {sum} over x from {literal} to {literal}', 'readings {value}', '{sum}',
  ],
  soup: ['', '{word} {soup}', '{word}{soup}', '{word} {word} {soup}'],
  word: [
    '(', ')', '[', ']', ',', ':', '=', '==', '.', '"', '±', '+/-', '^', '²', '√', '$', '# x', 'and', 'or', 'not', 'if', 'then', 'else', 'where', 'of', 'for', 'each', 'from', 'to', 'over',
    'the', 'least', 'shall', 'use', 'with', 'needs', 'because', 'row', 'readings', 'within', 'by', 'on', '2026-09-14', '1,5', '1 000', '.5', '5.', '5 m ^2', '2 x', '10 W/m²/K',
    'const', '–', '“M”', '１', '\u202e', '\u200b', '{name}', '{literal}',
  ],
};
