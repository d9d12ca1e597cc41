// Units of time, distance ridden, speed, flow, fuel use and temperature.
import { imperialGallon, inverse, scale, unit, usGallon } from './unit-make.ts';

export const hour = unit('duration', 'h', 3600, 'hr', 'hrs', 'hour', 'hours');
export const minute = unit('duration', 'min', 60, 'mins', 'minute', 'minutes');
export const second = unit('duration', 's', 1, 'sec', 'secs', 'second', 'seconds');
export const durations = [hour, minute, second] as const;

export const runningHour = unit('running time', 'h', 3600, 'hr', 'hrs', 'hour', 'hours', 'runninghours');
export const runningMinute = unit('running time', 'min', 60, 'mins', 'minute', 'minutes');
export const runningTimes = [runningHour, runningMinute] as const;

// A month here is the mean Gregorian month: for comparing and printing lengths. Due dates are counted with addMonths.
export const day = unit('calendar time', 'd', 86_400, 'day', 'days');
export const week = unit('calendar time', 'wk', 7 * 86_400, 'week', 'weeks', 'wks');
export const month = unit('calendar time', 'months', 30.436875 * 86_400, 'month', 'mth', 'mths', 'mo', 'mos');
export const year = unit('calendar time', 'years', 365.2425 * 86_400, 'year', 'yr', 'yrs');
export const calendarTimes = [day, week, month, year] as const;

export const kilometre = unit(
  'distance ridden',
  'km',
  1000,
  'kms',
  'kilometre',
  'kilometres',
  'kilometer',
  'kilometers',
);
export const mile = unit('distance ridden', 'mi', 1609.344, 'mile', 'miles', 'mls');
export const metreRidden = unit('distance ridden', 'm', 1, 'metre', 'metres', 'meter', 'meters');
export const distances = [kilometre, mile, metreRidden] as const;

export const kilometrePerHour = unit('speed', 'km/h', 1000 / 3600, 'kph', 'kmh', 'kmph', 'km/hr', 'km/hour');
export const milePerHour = unit('speed', 'mph', 1609.344 / 3600, 'mi/h', 'mile/h', 'miles/h', 'miles/hour');
export const metrePerSecond = unit('speed', 'm/s', 1, 'm/sec');
export const speeds = [kilometrePerHour, milePerHour, metrePerSecond] as const;

export const revolutionsPerMinute = unit(
  'rotation speed',
  'rpm',
  Math.PI / 30,
  'r/min',
  'rev/min',
  'revs/min',
  'revs/minute',
  'revolutions/minute',
  'min⁻¹',
  'upm',
);
export const radianPerSecond = unit('rotation speed', 'rad/s', 1);
export const rotationSpeeds = [revolutionsPerMinute, radianPerSecond] as const;

export const cubicCentimetrePerMinute = unit('flow', 'cc/min', 1e-6 / 60, 'ml/min', 'cm³/min', 'cc/minute');
export const litrePerHour = unit('flow', 'l/h', 0.001 / 3600, 'l/hr');
export const litrePerMinute = unit('flow', 'l/min', 0.001 / 60);
export const millilitrePerHour = unit('flow', 'ml/h', 1e-6 / 3600, 'cc/h', 'ml/hr', 'cc/hr');
export const flows = [cubicCentimetrePerMinute, litrePerHour, litrePerMinute, millilitrePerHour] as const;

export const litrePer100Kilometres = unit(
  'fuel use',
  'l/100 km',
  0.001 / 100_000,
  'l/100',
  'litres/100km',
  'liters/100km',
);
export const milePerImperialGallon = inverse(
  'fuel use',
  'mpg imp',
  imperialGallon / 1609.344,
  'impmpg',
  'mpguk',
  'ukmpg',
  'mpg(imp)',
  'mi/impgal',
  'miles/impgal',
);
export const milePerUsGallon = inverse(
  'fuel use',
  'mpg US',
  usGallon / 1609.344,
  'usmpg',
  'mpg(us)',
  'mi/usgal',
  'miles/usgal',
);
export const kilometrePerLitre = inverse('fuel use', 'km/l', 0.001 / 1000, 'km/litre', 'km/liter', 'kpl');
export const fuelUses = [litrePer100Kilometres, milePerImperialGallon, milePerUsGallon, kilometrePerLitre] as const;

export const celsius = scale(
  'temperature',
  '°C',
  1,
  273.15,
  'C',
  'degC',
  'degreesC',
  'degreeC',
  'celsius',
  'centigrade',
);
export const fahrenheit = scale(
  'temperature',
  '°F',
  5 / 9,
  459.67 * (5 / 9),
  'F',
  'degF',
  'degreesF',
  'degreeF',
  'fahrenheit',
);
export const kelvin = unit('temperature', 'K', 1, 'kelvin');
export const temperatures = [celsius, fahrenheit, kelvin] as const;

export const celsiusStep = unit('temperature difference', '°C', 1, 'K', 'C', 'degC', 'kelvin', 'celsius');
export const fahrenheitStep = unit('temperature difference', '°F', 5 / 9, 'F', 'degF', 'fahrenheit');
export const temperatureDifferences = [celsiusStep, fahrenheitStep] as const;
